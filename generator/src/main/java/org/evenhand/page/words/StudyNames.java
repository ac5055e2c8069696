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
import org.evenhand.words.Words;

/**
 * What a study calls its levels, measurands and comparisons.
 *
 * @param folder in which it lies
 * @param study whose names these are
 * @param words of the language
 */
public record StudyNames(ResultsFolder folder, Study study, Words words) {

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
        return study.factor().equals("item") ? words.say("name.item") : Names.setting(study.factor());
    }

    /** A level as readers see it: "spreader", "2000 MHz", "Quillet 3". */
    public String level(String level) {
        if (study.factor().equals("item")) {
            return Optional.ofNullable(folder.items().get(level))
                    .map(StudyNames::shortName)
                    .orElse(level);
        }
        return Names.value(level, words);
    }

    /** A level within a sentence: "with spreader", "at 2000 MHz", "for specimen A1", "without cooling". */
    public String under(String level) {
        if (study.factor().equals("item")) {
            return words.say("name.with-item", level(level));
        }
        if (study.factor().equals("specimen")) {
            return words.say("name.for-specimen", level(level));
        }
        if (level.equals(NONE)) {
            return words.say("name.without", factor());
        }
        String last = study.factor().substring(study.factor().lastIndexOf('-') + 1);
        return words.say(
                Names.isQuantity(level) || AT.contains(last) ? "name.at-level" : "name.with-level", level(level));
    }

    /** What is compared: "Energy taken in the soak: spreader against none". */
    public String subject(Comparison plan) {
        String title = plan.measurand()
                .map(this::title)
                .orElseGet(() -> words.say("name.geometric-mean-of", String.join(", ", plan.of())));
        if (plan.kind() == Comparison.Kind.TREND) {
            return words.say("name.over", title, factor());
        }
        if (plan.level().isEmpty()) {
            return ahead(plan, title);
        }
        String level = level(plan.level().get());
        return ahead(
                plan,
                plan.against()
                        .map(a -> words.say("name.against", title, level, level(a)))
                        .orElseGet(() -> words.say("name.of-level", title, level)));
    }

    private String ahead(Comparison plan, String subject) {
        return plan.duration()
                .map(d -> words.say("name.ahead", subject, Names.quantity(d, words)))
                .orElse(subject);
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
}
