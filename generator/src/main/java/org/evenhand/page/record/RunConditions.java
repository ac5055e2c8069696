package org.evenhand.page.record;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.model.Run;
import org.evenhand.page.view.Entry;
import org.evenhand.page.words.Names;
import org.evenhand.words.Words;

/** Under what a run was done: its settings, its surroundings, what was noted beside. */
final class RunConditions {

    private RunConditions() {}

    static List<Entry> of(Run run, Words words) {
        List<Entry> conditions = new ArrayList<>();
        run.settings().forEach((name, value) -> conditions.add(Entry.of(Names.label(name), Names.value(value, words))));
        conditions.add(Entry.of(
                words.say("record.ambient"),
                run.ambient().map(a -> Names.quantity(a, words)).orElse(words.say("record.not-stated"))));
        run.circumstances().forEach((name, value) -> {
            boolean isCredit = name.equals("done-by"); // which stands in the head
            if (!isCredit) {
                conditions.add(Entry.of(Names.label(name), Names.value(value, words)));
            }
        });
        return conditions;
    }
}
