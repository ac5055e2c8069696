package org.evenhand.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import freemarker.template.TemplateModel;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Entry;
import org.evenhand.page.view.HeadBlock;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Question;
import org.junit.jupiter.api.Test;

class ViewMapTest {
    record Odd(Object thing) {}

    @Test
    void recordsAndListsBecomeMapsAndListsAllTheWayDown() {
        Map<String, Object> map = ViewMap.of(new HeadBlock("a", "b", "", "", List.of(Entry.of("item", "Quillet 3"))));
        assertEquals(List.of("kind", "identification", "version", "status", "entries"), List.copyOf(map.keySet()));
        assertEquals(
                List.of(Map.of(
                        "label",
                        "item",
                        "values",
                        List.of(Map.of("text", "Quillet 3", "href", "", "within", false)),
                        "note",
                        "")),
                map.get("entries"));
    }

    @Test
    void anEmptyOptionalIsAMissingEntryAndAFullOneItsValue() {
        assertFalse(ViewMap.of(Caveat.note("warm")).containsKey("more"));
        Link more = Link.here("more", "x");
        assertEquals(
                ViewMap.of(more),
                ViewMap.of(new Caveat("r", "t", Optional.of(more))).get("more"));
    }

    @Test
    void onlyMarkupIsMarkup() {
        Question question = new Question(
                "q", Link.plain("<b>"), "final", Markup.text("a < b"), Optional.empty(), List.of(), List.of(), "");
        Map<String, Object> map = ViewMap.of(question);
        assertTrue(map.get("shortAnswer") instanceof TemplateModel);
        assertEquals("final", map.get("status"));
    }

    @Test
    void whatTemplatesMustNotSeeIsRefusedByName() {
        String message = assertThrows(IllegalArgumentException.class, () -> ViewMap.of(new Odd(new StringBuilder())))
                .getMessage();
        assertEquals("Odd.thing is a java.lang.StringBuilder", message);
        assertEquals(
                "Odd.thing is null",
                assertThrows(IllegalArgumentException.class, () -> ViewMap.of(new Odd(null)))
                        .getMessage());
    }

    @Test
    void plainTextBecomesMarkupThatShowsIt() {
        assertEquals(
                "a &lt; b &amp; &quot;c&quot; &#39;d&#39;",
                Markup.text("a < b & \"c\" 'd'").html());
    }

    @Test
    void aLinkOutsideIsOfTheWebOnly() {
        assertThrows(IllegalArgumentException.class, () -> Link.outside("x", "javascript:alert(1)"));
        assertThrows(IllegalArgumentException.class, () -> Link.outside("x", "data:text/html,x"));
    }
}
