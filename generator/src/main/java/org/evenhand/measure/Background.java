package org.evenhand.measure;

import org.evenhand.measure.RunValue.AtMost;
import org.evenhand.measure.RunValue.Known;
import org.evenhand.measure.RunValue.Missing;
import org.evenhand.model.Method;
import org.evenhand.model.Run;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.statistics.SoundLevel;
import org.evenhand.words.Phrase;

/**
 * Takes the background off the sound levels of a run whose method asks for it.
 *
 * <p>L = 10 lg(10^(L₁/10) − 10^(L₀/10)). Its derivatives are c = 1/(1 − 10^(−ΔL/10)) by the level L₁ and 1 − c by the
 * background L₀, so that an offset common to both readings stays as it is. Source: ISO 3744:2010, equation (16).
 */
final class Background {

    /** Nothing is taken off beyond this difference. Source: ISO 3744:2010, beside equation (16). */
    private static final double NEGLIGIBLE_FROM_DB = 15;

    private static final String FIELD = "background";

    private final Run run;
    private final Method method;
    private final InstrumentErrors errors;

    Background(Run run, Method method, InstrumentErrors errors) {
        this.run = run;
        this.method = method;
        this.errors = errors;
    }

    /**
     * The level of the source alone: at most a bound if the background is nearer than 3 dB, missing if there is none.
     *
     * @param value with the background in it; anything but a known level is handed back as it is
     * @param source the reading or column it comes from
     */
    RunValue takenOff(RunValue value, String source) {
        if (!method.needsBackground()
                || !(value instanceof Known level)
                || level.unit().kind() != UnitKind.LEVEL) {
            return value;
        }
        String written = run.circumstances().get(FIELD);
        if (written == null) {
            return new Missing("background-missing", Phrase.of("missing.no-background"));
        }
        try {
            return takenOff(level, source, Quantity.parse(written, level.unit()));
        } catch (MisreadException e) {
            return new Missing(
                    "unit-dimension",
                    Phrase.of("missing.background-unit", written, level.unit().symbol()));
        }
    }

    private RunValue takenOff(Known level, String source, Quantity background) {
        Unit unit = level.unit();
        double backgroundDb = background.in(unit);
        SoundLevel.Corrected corrected =
                SoundLevel.correctedForBackground(level.value(), backgroundDb, NEGLIGIBLE_FROM_DB);
        if (corrected.upperBoundOnly()) {
            return new AtMost(corrected.levelDb(), unit);
        }
        if (corrected.correctionDb() == 0) {
            return level;
        }
        double byLevel = 1 / (1 - StrictMath.pow(10, (backgroundDb - level.value()) / 10));
        Contributions ofBackground = background.expandedUncertainty().isPresent()
                ? errors.asStated(FIELD, background.standardUncertaintyIn(unit))
                : errors.ofBackground(source, unit, backgroundDb);
        return Values.known(
                corrected.levelDb(),
                unit,
                level.withinRun() * byLevel,
                () -> level.contributions().scaled(byLevel).plus(ofBackground.scaled(1 - byLevel)));
    }
}
