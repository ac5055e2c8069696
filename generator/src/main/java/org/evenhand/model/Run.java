package org.evenhand.model;

import java.time.OffsetDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.quantity.Quantity;

/**
 * One execution of a method on one specimen under stated settings.
 *
 * @param id its name within the study
 * @param study where it lives
 * @param method its method's id
 * @param methodVersion under which it was done, where that is not the method's present one
 * @param item what was tested
 * @param specimen which example of it
 * @param settings the conditions under control
 * @param started when
 * @param length how long it lasted
 * @param ambient the temperature of the surroundings
 * @param instruments by column or reading
 * @param log its time series
 * @param readings by name
 * @param outcome how it ended
 * @param why it did not complete
 * @param origin whose figures these are
 * @param circumstances probe, altitude, orientation, background, distance, rested, idle-basis, done-by: what was noted, by
 *     name
 * @param deviations from the method
 * @param waivers for this run
 * @param pictures of it
 * @param places where the fields stand
 */
public record Run(
        String id,
        String study,
        String method,
        Optional<String> methodVersion,
        String item,
        Optional<String> specimen,
        Map<String, String> settings,
        Optional<OffsetDateTime> started,
        Optional<Quantity> length,
        Optional<Quantity> ambient,
        Map<String, String> instruments,
        Optional<LogSource> log,
        Map<String, Reading> readings,
        RunOutcome outcome,
        Optional<String> why,
        Origin origin,
        Map<String, String> circumstances,
        List<Deviation> deviations,
        List<Waiver> waivers,
        List<Picture> pictures,
        Places places) {

    public Run {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        instruments = Map.copyOf(instruments);
        readings = Map.copyOf(readings);
        circumstances = Collections.unmodifiableMap(new LinkedHashMap<>(circumstances));
        deviations = List.copyOf(deviations);
        waivers = List.copyOf(waivers);
        pictures = List.copyOf(pictures);
    }

    /** The value of a factor for this run; absent if the run does not state it. */
    public Optional<String> levelOf(String factor) {
        return switch (factor) {
            case "item" -> Optional.of(item);
            case "specimen" -> specimen;
            default -> Optional.ofNullable(settings.get(factor));
        };
    }

    /** Who did it, where that is not the authors of the study. */
    public Optional<String> doneBy() {
        return Optional.ofNullable(circumstances.get("done-by"));
    }

    /** Whether its values count in a summary. */
    public boolean counts() {
        return outcome == RunOutcome.COMPLETED;
    }
}
