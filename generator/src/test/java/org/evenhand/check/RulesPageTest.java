package org.evenhand.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of the rules lists those there are, with what is fixed about each. */
class RulesPageTest {

    private static final Path RULES = Path.of("../docs/rules");
    private static final String BEGIN = "<!-- the rules begin -->\n";
    private static final String END = "<!-- the rules end -->\n";

    /** {@code -Devenhand.renew=true} writes the list anew; read the difference before committing it. */
    @Test
    void theListIsThatOfTheProgram() throws IOException {
        Path page = RULES.resolve("README.md");
        String text = Files.readString(page);
        String before = text.substring(0, text.indexOf(BEGIN) + BEGIN.length());
        String after = text.substring(text.indexOf(END));
        if (Boolean.getBoolean("evenhand.renew")) {
            Files.writeString(page, before + list() + after);
            text = Files.readString(page);
        }
        assertEquals(before + list() + after, text);
    }

    @Test
    void everyPageIsOfARuleThatExists() throws IOException {
        TreeSet<String> pages = new TreeSet<>();
        try (Stream<Path> files = Files.list(RULES)) {
            files.map(f -> f.getFileName().toString())
                    .filter(f -> !f.equals("README.md"))
                    .forEach(f -> pages.add(f.replace(".md", "")));
        }
        TreeSet<String> rules = new TreeSet<>();
        Catalogue.facts().forEach(f -> rules.add(f.id()));
        assertEquals(rules, pages);
    }

    private static String list() {
        StringBuilder list = new StringBuilder();
        Group group = null;
        for (RuleFacts facts : Catalogue.facts()) {
            if (facts.group() != group) {
                group = facts.group();
                list.append("\n## ").append(group.title()).append("\n\n");
                list.append("| rule | finds | severity | limit |\n| --- | --- | --- | --- |\n");
            }
            list.append("| [")
                    .append(facts.id())
                    .append("](")
                    .append(facts.id())
                    .append(".md) | ");
            list.append(facts.finds(org.evenhand.words.Words.english()))
                    .append(" | ")
                    .append(facts.severity().word())
                    .append(" | ");
            list.append(facts.limit()
                            .map(l -> l.value() + "; " + l.origin(org.evenhand.words.Words.english()))
                            .orElse("–"))
                    .append(" |\n");
        }
        return list.append('\n').toString();
    }
}
