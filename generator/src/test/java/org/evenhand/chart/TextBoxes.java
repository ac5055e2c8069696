package org.evenhand.chart;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** Notes the box of the ink of each text, and draws nothing. */
final class TextBoxes extends VectorGraphics implements Lettering.Sink {

    final List<Rectangle2D> boxes = new ArrayList<>();

    @Override
    public void draw(Shape shape) {
        // Only texts are noted.
    }

    @Override
    public void fill(Shape shape) {
        // Only texts are noted.
    }

    @Override
    public void glyphs(List<Lettering.Glyph> glyphs, double x, double y, double sizePx) {
        Point2D at = getTransform().transform(new Point2D.Double(x, y), null);
        double scale = sizePx / Lettering.EM;
        Rectangle2D box = null;
        for (Lettering.Glyph glyph : glyphs) {
            AffineTransform place = AffineTransform.getTranslateInstance(at.getX(), at.getY());
            place.scale(scale, scale);
            place.translate(glyph.x(), 0);
            Rectangle2D ink = place.createTransformedShape(Lettering.outline(glyph.code()))
                    .getBounds2D();
            if (!ink.isEmpty()) {
                box = box == null ? ink : box.createUnion(ink);
            }
        }
        if (box != null) {
            boxes.add(box);
        }
    }
}
