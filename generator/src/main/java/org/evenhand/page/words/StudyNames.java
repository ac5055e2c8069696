package org.evenhand.page.words;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.evenhand.model.Comparison;
import org.evenhand.model.Item;
import org.evenhand.model.Measurand;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.ResultsFolder;
import org.evenhand.model.Study;
import org.evenhand.quantity.Figures;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;

/**
 * What a study calls its levels, measurands and comparisons.
 *
 * @param folder in which it lies
 * @param study whose names these are
 */
public record StudyNames(ResultsFolder folder, Study study) {

    private static final Set<String> AT = Set.of(
            "speed", "clock", "rate", "load", "temperature", "position", "setting", "frequency", "voltage", "pressure");

    /** The level of a factor that is not there at all. */
    private static final String NONE = "none";

    public Measurand measurand(MeasurandId id) {
        return folder.methods().get(id.method()).measurands().get(id.measurand());
    }

    public String title(MeasurandId id) {
        return measurand(id).title();
    }

    /** How addresses name a measurand: by its id alone unless the study has several methods. */
    public String address(MeasurandId id) {
        return study.methods().size() > 1 ? id.toString() : id.measurand();
    }

    /** The factor in words: "core voltage". */
    public String factor() {
        return study.factor().equals("item") ? "test item" : Names.setting(study.factor());
    }

    /** A level as readers see it: "spreader", "2000 MHz", "Quillet 3". */
    public String level(String level) {
        if (study.factor().equals("item")) {
            return Optional.ofNullable(folder.items().get(level))
                    .map(StudyNames::shortName)
                    .orElse(level);
        }
        return Names.value(level);
    }

    /** A level within a sentence: "with spreader", "at 2000 MHz", "for specimen A1", "without cooling". */
    public String under(String level) {
        if (study.factor().equals("item")) {
            return "with the " + level(level);
        }
        if (study.factor().equals("specimen")) {
            return "for specimen " + level(level);
        }
        if (level.equals(NONE)) {
            return "without " + factor();
        }
        String last = study.factor().substring(study.factor().lastIndexOf('-') + 1);
        return (isQuantity(level) || AT.contains(last) ? "at " : "with ") + level(level);
    }

    /** What is compared: "Energy taken in the soak: spreader against none". */
    public String subject(Comparison plan) {
        String title = plan.measurand().map(this::title).orElse("Geometric mean of " + String.join(", ", plan.of()));
        if (plan.kind() == Comparison.Kind.TREND) {
            return title + " over " + factor();
        }
        String levels = plan.level().map(this::level).orElse("")
                + plan.against().map(a -> " against " + level(a)).orElse("");
        String ahead = plan.duration()
                .map(d -> ", looking " + Names.quantity(d) + " ahead")
                .orElse("");
        return levels.isEmpty() ? title : title + ": " + levels + ahead;
    }

    /**
     * The comparison that names the two levels of a ratio: itself, or for a mean of ratios its first, because all of them
     * have the same levels or the mean is refused.
     */
    Optional<Comparison> pair(Comparison plan) {
        return plan.kind() == Comparison.Kind.GEOMETRIC_MEAN
                ? study.comparisons().stream()
                        .filter(c -> plan.of().contains(c.id()))
                        .findFirst()
                : Optional.of(plan);
    }

    /** A short name of a file's own id is preferred to the long name that begins with it. */
    private static String shortName(Item item) {
        String words = item.id().replace('-', ' ');
        return item.name().toLowerCase(Locale.ROOT).startsWith(words.toLowerCase(Locale.ROOT))
                ? item.name().substring(0, words.length()).replace(' ', Figures.NO_BREAK_SPACE.charAt(0))
                : item.name();
    }

    private static boolean isQuantity(String level) {
        try {
            Quantity.parseCount(level);
            return true;
        } catch (MisreadException e) {
            return false;
        }
    }
}
