package org.evenhand.chart;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Map;

/**
 * The drawing state that Java 2D asks for (transform, colour, stroke, clip), with every way to draw led to
 * {@link #draw(Shape)} and {@link #fill(Shape)}.
 */
abstract class VectorGraphics extends NoPixels {

    private AffineTransform transform = new AffineTransform();
    private Color color = Color.BLACK;
    private BasicStroke stroke = new BasicStroke();
    private Font font = Lettering.font(12);
    private Shape clipOnPage;
    private final RenderingHints hints = new RenderingHints(Map.of());

    /** Where drawing may leave a mark, in page coordinates; null for everywhere. */
    final Shape clipOnPage() {
        return clipOnPage;
    }

    // State

    @Override
    public Color getColor() {
        return color;
    }

    @Override
    public void setColor(Color to) {
        if (to != null) {
            color = to;
        }
    }

    @Override
    public Paint getPaint() {
        return color;
    }

    @Override
    public void setPaint(Paint paint) {
        if (!(paint instanceof Color plain)) {
            throw new UnsupportedOperationException("a chart is painted in plain colours only");
        }
        setColor(plain);
    }

    @Override
    public BasicStroke getStroke() {
        return stroke;
    }

    @Override
    public void setStroke(Stroke to) {
        stroke = (BasicStroke) to;
    }

    @Override
    public Font getFont() {
        return font;
    }

    @Override
    public void setFont(Font to) {
        font = to;
    }

    @Override
    public AffineTransform getTransform() {
        return new AffineTransform(transform);
    }

    @Override
    public void setTransform(AffineTransform to) {
        transform = new AffineTransform(to);
    }

    @Override
    public void transform(AffineTransform by) {
        transform.concatenate(by);
    }

    @Override
    public void translate(int x, int y) {
        transform.translate(x, y);
    }

    @Override
    public void translate(double x, double y) {
        transform.translate(x, y);
    }

    @Override
    public void rotate(double radians) {
        transform.rotate(radians);
    }

    @Override
    public void rotate(double radians, double x, double y) {
        transform.rotate(radians, x, y);
    }

    @Override
    public void scale(double x, double y) {
        transform.scale(x, y);
    }

    @Override
    public void shear(double x, double y) {
        transform.shear(x, y);
    }

    @Override
    public Shape getClip() {
        if (clipOnPage == null) {
            return null;
        }
        try {
            return transform.createInverse().createTransformedShape(clipOnPage);
        } catch (NoninvertibleTransformException e) {
            throw new IllegalStateException("the drawing is squeezed flat", e);
        }
    }

    @Override
    public void setClip(Shape to) {
        clipOnPage = to == null ? null : transform.createTransformedShape(to);
    }

    @Override
    public void setClip(int x, int y, int width, int height) {
        setClip(new Rectangle(x, y, width, height));
    }

    @Override
    public void clip(Shape with) {
        Area area = new Area(transform.createTransformedShape(with));
        if (clipOnPage != null) {
            area.intersect(new Area(clipOnPage));
        }
        clipOnPage = area;
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {
        clip(new Rectangle(x, y, width, height));
    }

    @Override
    public Rectangle getClipBounds() {
        Shape clip = getClip();
        return clip == null ? null : clip.getBounds();
    }

    @Override
    public FontRenderContext getFontRenderContext() {
        return Lettering.context();
    }

    @Override
    public void setRenderingHint(RenderingHints.Key key, Object value) {
        hints.put(key, value);
    }

    @Override
    public Object getRenderingHint(RenderingHints.Key key) {
        return hints.get(key);
    }

    @Override
    public void setRenderingHints(Map<?, ?> to) {
        hints.clear();
        hints.putAll(to);
    }

    @Override
    public void addRenderingHints(Map<?, ?> more) {
        hints.putAll(more);
    }

    @Override
    public RenderingHints getRenderingHints() {
        return (RenderingHints) hints.clone();
    }

    @Override
    public void setComposite(Composite composite) {
        throw pixels();
    }

    @Override
    public Composite getComposite() {
        return AlphaComposite.SrcOver;
    }

    @Override
    public void setBackground(Color background) {
        throw pixels();
    }

    @Override
    public Color getBackground() {
        return Ink.PAPER.color();
    }

    @Override
    public Graphics create() {
        throw pixels();
    }

    @Override
    public void dispose() {
        // Holds nothing that has to be given back.
    }

    // Shapes

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle2D.Double(x, y, width, height));
    }

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        draw(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {
        fill(new RoundRectangle2D.Double(x, y, width, height, arcWidth, arcHeight));
    }

    @Override
    public void drawOval(int x, int y, int width, int height) {
        draw(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void fillOval(int x, int y, int width, int height) {
        fill(new Ellipse2D.Double(x, y, width, height));
    }

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int extent) {
        draw(new Arc2D.Double(x, y, width, height, start, extent, Arc2D.OPEN));
    }

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int extent) {
        fill(new Arc2D.Double(x, y, width, height, start, extent, Arc2D.PIE));
    }

    @Override
    public void drawPolyline(int[] xs, int[] ys, int n) {
        draw(path(xs, ys, n));
    }

    @Override
    public void drawPolygon(int[] xs, int[] ys, int n) {
        Path2D path = path(xs, ys, n);
        path.closePath();
        draw(path);
    }

    @Override
    public void fillPolygon(int[] xs, int[] ys, int n) {
        Path2D path = path(xs, ys, n);
        path.closePath();
        fill(path);
    }

    private static Path2D path(int[] xs, int[] ys, int n) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < n; i++) {
            if (i == 0) {
                path.moveTo(xs[i], ys[i]);
            } else {
                path.lineTo(xs[i], ys[i]);
            }
        }
        return path;
    }

    // Text

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {
        fill(glyphs.getOutline(x, y));
    }

    @Override
    public void drawString(String text, int x, int y) {
        drawString(text, (float) x, (float) y);
    }

    @Override
    public void drawString(String text, float x, float y) {
        Lettering.draw(this, text, x, y, font.getSize2D());
    }
}
