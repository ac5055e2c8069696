package org.evenhand.command.start;

import java.util.LinkedHashMap;
import java.util.Map;

/** The longer texts of a first results folder. */
final class StarterTexts {

    /** By id. */
    static final Map<String, String> INSTRUMENTS = new LinkedHashMap<>();

    static {
        INSTRUMENTS.put("die-sensor", """
                # The sensor inside the item. Its accuracy is made up: take yours from the data sheet.
                instrument: die-sensor
                reads: temperature
                resolution: 0.1 K
                accuracy: 1 K
                calibrated: 2026-01-15
                calibration-valid: 12 months
                """);
        INSTRUMENTS.put("room-probe", """
                # A thermometer in the air, a metre from the item and out of its warm draught. Made up as well.
                instrument: room-probe
                reads: temperature
                resolution: 0.01 K
                accuracy: 0.3 K
                calibrated: 2026-01-15
                calibration-valid: 12 months
                """);
        INSTRUMENTS.put("power-meter", """
                # Where the power is measured matters as much as how: mains, dc-input, board-rail or on-chip.
                instrument: power-meter
                reads: power
                boundary: dc-input
                resolution: 1 mW
                accuracy: 0.5 % of reading + 10 mW
                calibrated: 2026-01-15
                calibration-valid: 12 months
                """);
    }

    static final String METHOD = """
            # How a test is done, what it records, and which figures come out of it.
            method: soak
            # Raise it when you change something that makes new runs incomparable with old ones.
            version: 1
            title: Soak under full load
            run-length: 30 min
            # Each hazard brings its caution onto the pages.
            hazards: [hot-surface]
            # The columns of a log, and their units.
            records: { temperature: °C, power: W, ambient: °C }
            cooling: fixed
            max-gap: 2 min
            measurands:
              settled-rise:
                title: Settled temperature rise above ambient
                reduce: settled        # the mean over the last window, if it no longer drifts
                column: temperature
                minus: ambient
                window: 5 min
                settled-below: 1 K     # the drift that is allowed within the window
                unit: K
                better: lower
              mean-power:
                title: Mean power
                reduce: mean
                column: power
                unit: W
                better: lower
            ---

            The item rests until it is as warm as the room. Then it works at full load for the whole run, while temperature,
            power and the temperature of the room are logged. Between two runs it rests again.
            """;

    static final String STUDY = """
            # One question, its runs, its comparisons, its answer.
            study: %s
            question: %s
            # [](evidence:...) makes the program write the figure. It will not let you claim what the runs do not show.
            short-answer: "A made-up example: the settled temperature rise differs by [](evidence:%s-rise)."
            method: %s
            # The one setting that is varied, and its values in the order in which they are shown.
            factor: %s
            levels: [%s]
            # For each level. A planned run that is missing keeps the study from being published.
            planned-runs: %d
            measurands: [settled-rise, mean-power]
            comparisons:
            %s
            # wanted, draft or final. Set it to final, and add "answered:" with the date, when the answer stands.
            status: draft
            authors: [%s]
            ---
            ## What we did

            These runs are made up. Each specimen ran once at every level, one block a day, in another order each day.

            ## What the runs show

            The ratio of the mean powers is [](evidence:%s-power).
            """;

    private StarterTexts() {}

    /** What to do with the folder. */
    static String readme(String item, String study, String method) {
        return """
                # A results folder

                Everything that a site is made of. The example runs are made up.

                1. `publication.yaml`: your title, name and address.
                2. `items/%1$s.yaml`: what you test, its specimens, what its maker states.
                3. `instruments/`: what you measure with; accuracy and calibration from their papers.
                4. `methods/%3$s.md`: how you test, what you log, which figures come out.
                5. `studies/%2$s/study.md`: the question and, later, the answer.
                6. Delete the files in `studies/%2$s/runs/` and `studies/%2$s/logs/`, and put your own in their place:

                       evenhand plan --from . --study %2$s --prepare --sheet run-sheet.html
                       evenhand take-in LOG --to . --study %2$s

                7. Set `invented: false` in `publication.yaml`.

                After each step `evenhand check .` says what is wrong, where, and what to do about it.
                """.formatted(item, study, method);
    }
}
