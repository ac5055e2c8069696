package org.evenhand.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.evenhand.model.Quota;
import org.evenhand.words.QuotaWords;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;

/** The page of the limits lists those there are, with their defaults. */
class LimitsPageTest {

    private static final Path PAGE = Path.of("../docs/limits.md");
    private static final String BEGIN = "<!-- the limits begin -->\n";
    private static final String END = "<!-- the limits end -->\n";

    /** {@code -Devenhand.renew=true} writes the list anew; read the difference before committing it. */
    @Test
    void theListIsThatOfTheProgram() throws IOException {
        String text = Files.readString(PAGE);
        String before = text.substring(0, text.indexOf(BEGIN) + BEGIN.length());
        String after = text.substring(text.indexOf(END));
        if (Boolean.getBoolean("evenhand.renew")) {
            Files.writeString(PAGE, before + list() + after);
            text = Files.readString(PAGE);
        }
        assertEquals(before + list() + after, text);
    }

    private static String list() {
        StringBuilder list = new StringBuilder("\n| limit | so many are read | of what |\n| --- | --: | --- |\n");
        for (Quota quota : Quota.values()) {
            list.append("| `").append(quota.id()).append("` | ").append(quota.usual());
            list.append(" | ").append(QuotaWords.what(quota, Words.english())).append(" |\n");
        }
        return list.append('\n').toString();
    }
}
