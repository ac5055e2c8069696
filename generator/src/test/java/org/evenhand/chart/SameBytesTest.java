package org.evenhand.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;

class SameBytesTest {

    @Test
    void charts_drawn_at_the_same_time_do_not_disturb_each_other() {
        List<Figure> figures = List.copyOf(Samples.all().values());
        Caption caption = new Caption("c", "t", "d");
        List<Chart> alone = figures.stream()
                .map(f -> Charts.svg(f, caption, 600, Words.english()))
                .toList();
        List<Chart> together = IntStream.range(0, 8 * figures.size())
                .parallel()
                .mapToObj(i -> Charts.svg(figures.get(i % figures.size()), caption, 600, Words.english()))
                .toList();
        for (int i = 0; i < together.size(); i++) {
            assertEquals(alone.get(i % figures.size()), together.get(i));
        }
    }

    @Test
    void locale_time_zone_and_what_was_drawn_before_change_nothing() {
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            for (Map.Entry<String, Figure> sample : Samples.all().entrySet()) {
                Locale.setDefault(Locale.ROOT);
                TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
                Chart before = Charts.svg(sample.getValue(), new Caption("c", "t", "d"), 600, Words.english());
                byte[] pngBefore = Charts.png(sample.getValue(), 600, 1, Words.english());
                for (String tag : new String[] {"tr-TR", "de-DE", "ar-EG", "hi-IN-u-nu-deva"}) {
                    Locale.setDefault(Locale.forLanguageTag(tag));
                    TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
                    assertEquals(
                            before,
                            Charts.svg(sample.getValue(), new Caption("c", "t", "d"), 600, Words.english()),
                            tag);
                    assertArrayEquals(pngBefore, Charts.png(sample.getValue(), 600, 1, Words.english()), tag);
                }
            }
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }
}
