package org.evenhand.check.rule;

import java.util.OptionalDouble;
import org.evenhand.compare.LevelRun;
import org.evenhand.quantity.Unit;

/** The ambient temperature of a run: what its log says, else what is stated. */
final class Ambient {

    static final Unit CELSIUS = Unit.of("°C");

    private Ambient() {}

    /** In °C, the mean over the run; nothing if it is neither logged nor stated. */
    static OptionalDouble of(LevelRun run) {
        OptionalDouble logged = run.measured().log().isPresent()
                ? run.measured()
                        .log()
                        .get()
                        .column("ambient")
                        .map(c -> OptionalDouble.of(c.mean()))
                        .orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
        if (logged.isPresent()) {
            return logged;
        }
        return run.run().ambient().isPresent()
                ? OptionalDouble.of(run.run().ambient().get().in(CELSIUS))
                : OptionalDouble.empty();
    }
}
