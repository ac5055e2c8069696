package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;
import org.evenhand.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplatesTest {
    private static final Link HOSTILE = Link.plain("</p><script>${7*7}<#-- &amp;");

    @TempDir
    Path folder;

    private String own(String template) throws IOException {
        Files.writeString(folder.resolve("own.ftlh"), template);
        return Templates.overriddenBy(folder).render("own", HOSTILE, Words.english());
    }

    @Test
    void aTemplateOfOnesOwnStandsBesideThoseOfTheProgram() throws IOException {
        assertEquals("<p>no</p>\n", own("<#import \"words.ftlh\" as w><p>${within?then('yes', 'no')}</p>\n"));
        Files.writeString(folder.resolve("caveats.ftlh"), "<p>${frame.title}</p>");
        Templates templates = Templates.overriddenBy(folder);
        assertEquals("<p>Caveats</p>", templates.render("caveats", ExampleViews.caveats(), Words.english()));
        assertTrue(templates
                .render("changes", ExampleViews.changes(), Words.english())
                .startsWith("<!DOCTYPE html>"));
    }

    @Test
    void aFileOfOnesOwnTakesThePlaceOfTheProgramsFile() throws IOException {
        Files.createDirectories(folder.resolve("assets"));
        Files.writeString(folder.resolve("assets/evenhand.css"), "p { color: black }");
        Templates templates = Templates.overriddenBy(folder);
        assertEquals("p { color: black }", new String(templates.asset("assets/evenhand.css"), StandardCharsets.UTF_8));
        String font = "assets/fonts/archivo-latin.woff2";
        assertArrayEquals(Templates.bundled().asset(font), templates.asset(font));
    }

    @Test
    void textIsEscapedInElementsAndInAttributes() throws IOException {
        assertEquals(
                "<p title=\"&lt;/p&gt;&lt;script&gt;${7*7}&lt;#-- &amp;amp;\">&lt;/p&gt;&lt;script&gt;${7*7}&lt;#-- &amp;amp;</p>",
                own("<p title=\"${text}\">${text}</p>"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
                "${\"freemarker.template.utility.ObjectConstructor\"?new()(\"java.io.File\", \"x\")}",
                "${text?api.length()}",
                "${text.getClass()}",
                "<#include \"../outside.ftlh\">",
                "${nothing}"
            })
    void aTemplateReachesNothingButItsView(String template) throws IOException {
        Files.writeString(folder.resolveSibling("outside.ftlh"), "outside");
        String message =
                assertThrows(IllegalStateException.class, () -> own(template)).getMessage();
        assertTrue(message.startsWith("template own: "), message);
    }

    @Test
    void aMissingTemplateIsNamed() {
        assertTrue(assertThrows(
                        IllegalStateException.class,
                        () -> Templates.bundled().render("nowhere", HOSTILE, Words.english()))
                .getMessage()
                .contains("nowhere.ftlh"));
        assertThrows(IllegalArgumentException.class, () -> Templates.bundled().asset("../pom.xml"));
    }

    @Test
    void aPageIsTheSameInEveryLocaleAndTimeZone() {
        String before = Templates.bundled().render("answer", ExampleAnswer.answer(), Words.english());
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            assertEquals(before, Templates.bundled().render("answer", ExampleAnswer.answer(), Words.english()));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
        assertFalse(before.contains("\r"));
    }

    @Test
    void theGuideDocumentsEveryFieldThatATemplateSees() throws IOException {
        String guide = Files.readString(Path.of(System.getProperty("evenhand.root", ".."), "docs", "templates.md"));
        for (Class<?> view : views()) {
            int start = guide.indexOf("\n### " + view.getSimpleName() + "\n");
            assertTrue(start >= 0, () -> "docs/templates.md has no section on " + view.getSimpleName());
            int next = guide.indexOf("\n### ", start + 1);
            String section = guide.substring(start, next < 0 ? guide.length() : next);
            for (RecordComponent component : view.getRecordComponents())
                assertTrue(
                        section.contains("| `" + component.getName() + "` |"),
                        view.getSimpleName() + "." + component.getName());
        }
    }

    /** Every record that the pages' views hold, themselves included. */
    private static Set<Class<?>> views() {
        Pattern named = Pattern.compile("org\\.evenhand\\.page\\.view\\.\\w+");
        Set<Class<?>> found = new LinkedHashSet<>();
        Deque<Class<?>> open = new ArrayDeque<>();
        ExampleViews.all().values().forEach(sheet -> open.add(sheet.view().getClass()));
        while (!open.isEmpty()) {
            Class<?> view = open.remove();
            if (view == org.evenhand.page.view.Markup.class || !found.add(view)) continue;
            for (RecordComponent component : view.getRecordComponents()) {
                Matcher types = named.matcher(component.getGenericType().getTypeName());
                while (types.find()) open.add(classNamed(types.group()));
            }
        }
        return found;
    }

    private static Class<?> classNamed(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    @Test
    void addressesOfEvidenceStayApart() {
        assertEquals("level.spreader-and-fan.settled-rise", Address.level("spreader and fan", "settled-rise"));
        assertEquals("level.2-point-0-ghz.speed", Address.level("2.0 GHz", "speed"));
        assertEquals("level.20-ghz.speed", Address.level("20 GHz", "speed"));
        assertEquals("level.minus-5-c.speed", Address.level("-5 °C", "speed"));
        assertEquals("level.minus-5-c.speed", Address.level("\u22125 °C", "speed"));
        assertEquals("../../../", Address.rootFrom(Address.run("heat-spreader", "none-1")));
        assertEquals("", Address.rootFrom(Address.INDEX));
    }
}
