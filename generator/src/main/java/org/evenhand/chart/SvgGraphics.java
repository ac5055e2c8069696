package org.evenhand.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Writes what is drawn as SVG: lines of one look that follow each other become one path, a letter is written once and
 * then referred to, coordinates have two decimals at most.
 *
 * <p>Source: SVG 2; WAI-ARIA Graphics Module 1.0 for the text alternative.
 */
final class SvgGraphics extends VectorGraphics implements Lettering.Sink {

    private final String id;
    private final StringBuilder body = new StringBuilder();
    private final TreeSet<Integer> glyphsUsed = new TreeSet<>();
    private final Map<String, String> clips = new LinkedHashMap<>();
    private String penOfLine = "";
    private PathText line = new PathText(100);

    /** @param id begins every id that is written */
    SvgGraphics(String id) {
        this.id = id;
    }

    @Override
    public void draw(Shape shape) {
        Color color = getColor();
        if (color.getAlpha() == 0) {
            return;
        }
        String pen = pen(color, getStroke()) + clipAttribute(shape);
        if (!pen.equals(penOfLine)) {
            endLine();
            penOfLine = pen;
        }
        line.append(shape, getTransform());
    }

    @Override
    public void fill(Shape shape) {
        Color color = getColor();
        if (color.getAlpha() == 0) {
            return;
        }
        endLine();
        String look = brush(color) + clipAttribute(shape);
        if (shape instanceof Ellipse2D round && round.getWidth() == round.getHeight()) {
            Point2D centre = new Point2D.Double(round.getCenterX(), round.getCenterY());
            getTransform().transform(centre, centre);
            double radius = round.getWidth() / 2 * getTransform().getScaleX();
            body.append("<circle").append(attribute("cx", centre.getX())).append(attribute("cy", centre.getY()));
            body.append(attribute("r", radius)).append(look).append("/>\n");
            return;
        }
        PathText path = new PathText(100);
        path.append(shape, getTransform());
        if (!path.isEmpty()) {
            body.append("<path d=\"").append(path).append('"').append(look).append("/>\n");
        }
    }

    @Override
    public void glyphs(List<Lettering.Glyph> glyphs, double x, double y, double sizePx) {
        List<Lettering.Glyph> visible = new ArrayList<>();
        for (Lettering.Glyph glyph : glyphs) {
            if (!Lettering.outline(glyph.code()).getBounds2D().isEmpty()) {
                visible.add(glyph);
            }
        }
        if (visible.isEmpty()) {
            return;
        }
        endLine();
        Point2D at = getTransform().transform(new Point2D.Double(x, y), null);
        // Seven decimals: a line of text a thousand pixels long is then right to a hundredth of a pixel.
        long scale = StrictMath.round(sizePx / Lettering.EM * 10_000_000);
        body.append("<g").append(brush(getColor())).append(" transform=\"translate(");
        body.append(PathText.number(at.getX()))
                .append(' ')
                .append(PathText.number(at.getY()))
                .append(") scale(");
        body.append(PathText.number(scale, 10_000_000)).append(")\">");
        for (Lettering.Glyph glyph : visible) {
            glyphsUsed.add(glyph.code());
            body.append("<use href=\"#")
                    .append(id)
                    .append("-g")
                    .append(glyph.code())
                    .append('"');
            if (glyph.x() != 0) {
                body.append(" x=\"").append(glyph.x()).append('"');
            }
            body.append("/>");
        }
        body.append("</g>\n");
    }

    private void endLine() {
        if (!line.isEmpty()) {
            body.append("<path d=\"").append(line).append('"').append(penOfLine).append("/>\n");
        }
        line = new PathText(100);
        penOfLine = "";
    }

    private static String brush(Color color) {
        Ink ink = Ink.of(color);
        return " class=\"" + ink.fillClass() + "\" fill=\"" + ink.hex() + "\"" + opacity("fill-opacity", color);
    }

    private static String pen(Color color, BasicStroke stroke) {
        Ink ink = Ink.of(color);
        StringBuilder pen = new StringBuilder(" class=\"" + ink.strokeClass() + "\" fill=\"none\" stroke=\"");
        pen.append(ink.hex()).append('"').append(opacity("stroke-opacity", color));
        pen.append(attribute("stroke-width", stroke.getLineWidth()));
        if (stroke.getLineJoin() == BasicStroke.JOIN_ROUND) {
            pen.append(" stroke-linejoin=\"round\"");
        }
        if (stroke.getEndCap() == BasicStroke.CAP_ROUND) {
            pen.append(" stroke-linecap=\"round\"");
        }
        if (stroke.getDashArray() != null) {
            pen.append(" stroke-dasharray=\"");
            for (int i = 0; i < stroke.getDashArray().length; i++) {
                pen.append(i == 0 ? "" : " ").append(PathText.number(stroke.getDashArray()[i]));
            }
            pen.append('"');
        }
        return pen.toString();
    }

    private static String opacity(String name, Color color) {
        return color.getAlpha() == 255 ? "" : attribute(name, color.getAlpha() / 255.0);
    }

    private static String attribute(String name, double value) {
        return " " + name + "=\"" + PathText.number(value) + "\"";
    }

    /** Names the clip only for a shape that reaches beyond it. */
    private String clipAttribute(Shape shape) {
        Shape clip = clipOnPage();
        if (clip == null || isWithin(clip.getBounds2D(), shape)) {
            return "";
        }
        PathText path = new PathText(100);
        path.append(clip, null);
        String name = clips.computeIfAbsent(path.toString(), unused -> id + "-clip" + (clips.size() + 1));
        return " clip-path=\"url(#" + name + ")\"";
    }

    private boolean isWithin(Rectangle2D clip, Shape shape) {
        AffineTransform toPage = getTransform();
        if (shape instanceof Line2D straight) {
            return clip.outcode(toPage.transform(straight.getP1(), null)) == 0
                    && clip.outcode(toPage.transform(straight.getP2(), null)) == 0;
        }
        return clip.contains(new Path2D.Double(shape, toPage).getBounds2D());
    }

    /** The finished element. */
    String document(Caption caption, int width, int height) {
        endLine();
        StringBuilder svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"chart\" width=\"")
                .append(width);
        svg.append("\" height=\"")
                .append(height)
                .append("\" viewBox=\"0 0 ")
                .append(width)
                .append(' ');
        svg.append(height)
                .append("\" role=\"img\" aria-labelledby=\"")
                .append(id)
                .append("-title ");
        svg.append(id).append("-desc\">\n");
        svg.append("<title id=\"").append(id).append("-title\">").append(escape(caption.title()));
        svg.append("</title>\n<desc id=\"").append(id).append("-desc\">").append(escape(caption.description()));
        svg.append("</desc>\n");
        definitions(svg);
        return svg.append(body).append("</svg>\n").toString();
    }

    private void definitions(StringBuilder svg) {
        if (glyphsUsed.isEmpty() && clips.isEmpty()) {
            return;
        }
        svg.append("<defs>\n");
        for (int code : glyphsUsed) {
            PathText path = new PathText(1);
            path.append(Lettering.outline(code), null);
            svg.append("<path id=\"")
                    .append(id)
                    .append("-g")
                    .append(code)
                    .append("\" d=\"")
                    .append(path);
            svg.append("\"/>\n");
        }
        clips.forEach((path, name) -> svg.append("<clipPath id=\"")
                .append(name)
                .append("\"><path d=\"")
                .append(path)
                .append("\"/></clipPath>\n"));
        svg.append("</defs>\n");
    }

    /** Text for the inside of an element; what XML 1.0 does not allow is dropped. */
    static String escape(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                default -> {
                    boolean allowed = c == '\t' || c == '\n' || c >= 0x20 && c < 0xD800 || c >= 0xE000 && c < 0xFFFE;
                    if (allowed || c > 0xFFFF) {
                        escaped.appendCodePoint(c);
                    }
                }
            }
        });
        return escaped.toString();
    }
}
