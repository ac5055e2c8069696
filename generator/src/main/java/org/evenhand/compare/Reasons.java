package org.evenhand.compare;

import java.util.ArrayList;
import java.util.List;
import org.evenhand.words.Words;

/** Why a comparison says less than was asked, in the language of the publication. */
final class Reasons {

    private final Words words;
    private final List<String> said = new ArrayList<>();

    Reasons(Words words) {
        this.words = words;
    }

    /** Adds a reason. */
    void add(String key, Object... arguments) {
        said.add(words.say(key, arguments));
    }

    boolean isEmpty() {
        return said.isEmpty();
    }

    List<String> list() {
        return List.copyOf(said);
    }
}
