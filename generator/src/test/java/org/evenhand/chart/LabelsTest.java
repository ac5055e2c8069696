package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelsTest {

    @ParameterizedTest
    @ValueSource(ints = {280, 330, 439, 440, 600, 900})
    void no_text_touches_another_or_leaves_the_sheet(int width) {
        for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
            Layout layout = sample.getValue().layout(Words.english());
            int height = layout.height(width);
            TextBoxes texts = new TextBoxes();
            layout.paint(new Sheet(texts, width, height));
            List<Rectangle2D> boxes = texts.boxes;
            for (int i = 0; i < boxes.size(); i++) {
                Rectangle2D box = boxes.get(i);
                boolean inside = box.getX() >= -0.5
                        && box.getMaxX() <= width + 0.5
                        && box.getY() >= 0
                        && box.getMaxY() <= height;
                assertTrue(inside, sample.getKey() + " at " + width + ": " + box);
                for (int j = 0; j < i; j++) {
                    assertFalse(
                            box.intersects(boxes.get(j)),
                            sample.getKey() + " at " + width + ": " + box + " and " + boxes.get(j));
                }
            }
        }
    }

    @Test
    void a_text_is_broken_at_blanks_and_ends_in_an_ellipsis_where_it_has_no_room() {
        double room = Lettering.width("spreader and", 13);
        assertEquals(List.of("spreader and", "fan"), Lettering.wrap("spreader and fan", 13, room, 2));
        assertEquals(1, Lettering.wrap("spreader and fan", 13, room, 1).size());
        assertTrue(Lettering.wrap("spreader and fan", 13, room, 1).get(0).endsWith("…"));
        assertTrue(Lettering.width(Lettering.shorten("W".repeat(99), 13, 50), 13) <= 50);
    }

    /** Advance widths of the font's own table, in units of 1/2048 em: A 1401, space 651, as fontTools 4 prints hmtx. */
    @Test
    void the_width_of_a_text_is_the_sum_of_the_widths_in_the_font() {
        assertEquals((1401 + 651 + 1401) * 13 / 2048.0, Lettering.width("A A", 13), 1e-9);
    }
}
