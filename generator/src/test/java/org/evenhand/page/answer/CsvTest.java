package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.evenhand.page.Ids;
import org.junit.jupiter.api.Test;

class CsvTest {

    /** RFC 4180, 2.5 to 2.7; cells that a spreadsheet would run are led by an apostrophe, numbers never. */
    @Test
    void textCannotBecomeAFormulaAndNumbersStayNumbers() {
        byte[] bytes = Csv.withHeader("a", "b", "c")
                .text("=HYPERLINK(\"x\")")
                .text("say \"hi\", twice")
                .number(-12.5)
                .end()
                .text("@now")
                .text("plain")
                .number(3)
                .end()
                .bytes();
        assertEquals(
                "a,b,c\n\"'=HYPERLINK(\"\"x\"\")\",\"say \"\"hi\"\", twice\",-12.5\n\"'@now\",plain,3\n",
                new String(bytes, StandardCharsets.UTF_8));
    }

    @Test
    void namesAreListedAsPeopleCount() {
        assertEquals(
                List.of("A1", "A2", "A10", "B1"),
                Stream.of("B1", "A10", "A2", "A1").sorted(Ids.ORDER).toList());
    }
}
