package org.evenhand.page.answer;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.function.Supplier;
import org.evenhand.model.MeasurandId;
import org.evenhand.page.MadeBefore;
import org.evenhand.page.view.ComparedPair;

/**
 * Pairs of levels of one measurand, but for those that were judged before and of whose studies nothing has changed. Safe for
 * several threads.
 */
final class PairsBefore {

    private final MadeBefore before;
    private final String key;
    private final Map<String, ComparedPair> known;
    private final SortedMap<String, ComparedPair> now = new ConcurrentSkipListMap<>();

    /** What the cache keeps. */
    record Kept(SortedMap<String, ComparedPair> pairs) {}

    PairsBefore(MadeBefore before, MeasurandId measurand) {
        this.before = before;
        this.key = before.cache().key("pairs", measurand);
        this.known = before.cache().get(key, Kept.class).map(Kept::pairs).orElseGet(TreeMap::new);
    }

    /** @param first and second name the level of an answer each */
    ComparedPair of(Answer first, String firstLevel, Answer second, String secondLevel, Supplier<ComparedPair> judge) {
        String firstKey = before.key(first.checked());
        String secondKey = before.key(second.checked());
        if (firstKey.isEmpty() || secondKey.isEmpty()) {
            return judge.get();
        }
        String name = firstKey + " " + secondKey + " " + List.of(firstLevel, secondLevel);
        ComparedPair pair = known.get(name);
        ComparedPair made = pair == null ? judge.get() : pair;
        now.put(name, made);
        return made;
    }

    /** To be called when all pairs were asked for. */
    void keep() {
        if (!now.keySet().equals(known.keySet())) {
            before.cache().put(key, new Kept(now));
        }
    }
}
