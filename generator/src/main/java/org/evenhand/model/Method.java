package org.evenhand.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/**
 * How a test is done, what it records, and which measurands it yields.
 *
 * @param id its name in files and addresses
 * @param version of the method; runs under different versions are not compared
 * @param title as readers see it
 * @param runLength how long a run lasts
 * @param hazards what can hurt somebody
 * @param settings that every run has, by name
 * @param records the columns of a log and their units, in the order written
 * @param measurands in the order written
 * @param scales ordered words, from the least to the most
 * @param tolerances limits that replace the publication's and the rules'
 * @param needsAmbient whether its measurands depend on the surroundings
 * @param ambientRange within which it may be done
 * @param cooling whether cooling is fixed, or controlled by temperature
 * @param maxGap the longest gap between samples that an integral bridges
 * @param needsBackground whether a background reading belongs to each run
 * @param procedure in Markdown
 * @param procedureLine on which the procedure begins, from 1
 * @param places where the fields stand
 */
public record Method(
        String id,
        String version,
        String title,
        Optional<Quantity> runLength,
        List<Hazard> hazards,
        Map<String, String> settings,
        Map<String, Unit> records,
        Map<String, Measurand> measurands,
        Map<String, List<String>> scales,
        Map<String, Quantity> tolerances,
        boolean needsAmbient,
        Optional<AmbientRange> ambientRange,
        Optional<Cooling> cooling,
        Optional<Quantity> maxGap,
        boolean needsBackground,
        String procedure,
        int procedureLine,
        Places places) {

    /** Whether cooling stays as it is, or answers to temperature. */
    public enum Cooling {
        FIXED,
        CONTROLLED
    }

    /** Lowest and highest ambient temperature at which the method may be done. */
    public record AmbientRange(Quantity lowest, Quantity highest) {}

    public Method {
        hazards = List.copyOf(hazards);
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
        records = Collections.unmodifiableMap(new LinkedHashMap<>(records));
        measurands = Collections.unmodifiableMap(new LinkedHashMap<>(measurands));
        scales = Map.copyOf(scales);
        tolerances = Map.copyOf(tolerances);
    }
}
