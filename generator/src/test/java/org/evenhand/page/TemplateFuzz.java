package org.evenhand.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.words.Words;

/** Any text as templates see it: it comes out as text, in an element and in an attribute. */
public final class TemplateFuzz {

    private static final String BEFORE = "<p title=\"";
    private static final String BETWEEN = "\">";
    private static final String AFTER = "</p>";
    private static final Templates TEMPLATES = templates();

    private TemplateFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        String text = new String(data, StandardCharsets.UTF_8);
        String page = TEMPLATES.render("own", Link.plain(text), Words.english());
        String escaped = Markup.text(text).html();
        if (!page.equals(BEFORE + escaped + BETWEEN + escaped + AFTER)) {
            throw new IllegalStateException("not the text alone: " + page);
        }
        if (escaped.matches("(?s).*[<>\"'].*")) {
            throw new IllegalStateException("not escaped: " + escaped);
        }
        if (!org.jsoup.parser.Parser.unescapeEntities(escaped, false).equals(text)) {
            throw new IllegalStateException("does not read as it was written: " + escaped);
        }
    }

    private static Templates templates() {
        try {
            Path folder = Files.createTempDirectory("evenhand-fuzz");
            Files.writeString(folder.resolve("own.ftlh"), BEFORE + "${text}" + BETWEEN + "${text}" + AFTER);
            return Templates.overriddenBy(folder);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
