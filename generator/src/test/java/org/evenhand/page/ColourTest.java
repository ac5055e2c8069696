package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The style sheet's colours against WCAG 2.2: text 4.5:1 (1.4.3), marks of charts and edges of parts 3:1 (1.4.11). */
class ColourTest {
    private static final Pattern COLOUR = Pattern.compile("--([a-z0-9-]+): #([0-9a-f]{6}|[0-9a-f]{3});");
    private static final String SHEET =
            new String(Templates.bundled().asset("assets/evenhand.css"), StandardCharsets.UTF_8);

    /** Colours of the first rule for the root after the given place of the style sheet. */
    private static Map<String, Double> luminances(String after) {
        int start = SHEET.indexOf(":root {", SHEET.indexOf(after));
        Matcher colours = COLOUR.matcher(SHEET.substring(start, SHEET.indexOf('}', start)));
        Map<String, Double> luminances = new HashMap<>();
        while (colours.find()) luminances.put(colours.group(1), luminance(colours.group(2)));
        return luminances;
    }

    /** Relative luminance as WCAG 2.2 defines it, of a colour of three or six hexadecimal digits. */
    private static double luminance(String hex) {
        String six = hex.length() == 6 ? hex : hex.replaceAll("(.)", "$1$1");
        double[] weights = {0.2126, 0.7152, 0.0722};
        double sum = 0;
        for (int i = 0; i < 3; i++) {
            double c = Integer.parseInt(six.substring(2 * i, 2 * i + 2), 16) / 255.0;
            sum += weights[i] * (c <= 0.04045 ? c / 12.92 : StrictMath.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }

    private static double contrast(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    @Test
    void contrastAgreesWithPublishedValues() {
        assertEquals(21, contrast(luminance("fff"), luminance("000")), 1e-9); // WCAG 2.2, contrast ratio: up to 21:1
        assertEquals(4.54, contrast(luminance("ffffff"), luminance("767676")), 0.005); // from memory: the lightest grey
    }

    @ParameterizedTest
    @ValueSource(strings = {"/* System faces", "prefers-color-scheme: dark", "@media print"})
    void textAndMarksStandOutFromThePaper(String after) {
        Map<String, Double> colours = luminances(after);
        for (String text : List.of("ink", "muted", "accent"))
            for (String ground : List.of("paper", "sheet", "tint"))
                assertTrue(contrast(colours.get(text), colours.get(ground)) >= 4.5, text + " on " + ground);
        for (String mark : List.of("rule", "series-1", "series-2", "series-3", "series-4", "series-5", "series-6"))
            assertTrue(contrast(colours.get(mark), colours.get("paper")) >= 3, mark);
    }

    @Test
    void loadsNothingFromElsewhere() {
        Matcher urls = Pattern.compile("url\\(\"([^\"]+)\"\\)|@import").matcher(SHEET);
        int found = 0;
        for (; urls.find(); found++) assertTrue(Templates.ASSETS.contains("assets/" + urls.group(1)), urls.group());
        assertEquals(4, found);
    }

    @Test
    void fontsStayBelowTheirBudget() {
        int bytes = Templates.ASSETS.stream()
                .filter(path -> path.endsWith(".woff2"))
                .mapToInt(path -> Templates.bundled().asset(path).length)
                .sum();
        assertTrue(bytes < 200_000, () -> bytes + " bytes");
    }
}
