package org.evenhand.page.words;

import java.util.Locale;
import org.evenhand.model.Hazard;
import org.evenhand.page.view.Caution;
import org.evenhand.words.Words;

/**
 * What to mind when a method is repeated. The words repeat the usual cautions; local codes, makers' instructions and
 * licensed trades come first.
 */
public final class Hazards {

    private Hazards() {}

    public static Caution caution(Hazard hazard, Words words) {
        String name = hazard.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new Caution(words.say("hazard." + name), words.say("hazard." + name + "-text"));
    }
}
