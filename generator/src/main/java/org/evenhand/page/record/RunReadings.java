package org.evenhand.page.record;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.evenhand.model.Instrument;
import org.evenhand.model.Run;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Reading;
import org.evenhand.page.words.Names;
import org.evenhand.page.words.Origins;
import org.evenhand.words.Judgement;
import org.evenhand.words.Words;

/** What was noted of a run by hand or by its workload, by name. */
final class RunReadings {

    private RunReadings() {}

    static List<Reading> of(Run run, Map<String, Instrument> instruments, Words words) {
        return new TreeMap<>(run.readings())
                .entrySet().stream()
                        .map(reading -> {
                            String name = reading.getKey();
                            Instrument by = instruments.get(run.instruments().getOrDefault(name, ""));
                            return new Reading(
                                    Names.label(name),
                                    written(reading.getValue(), words),
                                    Origins.mark(run.origin(), words),
                                    by == null ? Link.plain("") : InstrumentPages.link(by));
                        })
                        .toList();
    }

    private static String written(org.evenhand.model.Reading reading, Words words) {
        if (reading instanceof org.evenhand.model.Reading.Measured measured) {
            return Names.quantity(measured.quantity(), words);
        }
        if (reading instanceof org.evenhand.model.Reading.NotReached notReached) {
            return Names.value(notReached.censored().toString(), words);
        }
        return Judgement.of(reading, words);
    }
}
