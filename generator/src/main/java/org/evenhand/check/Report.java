package org.evenhand.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.evenhand.model.Finding;
import org.evenhand.model.Limit;
import org.evenhand.model.Method;
import org.evenhand.model.Outcome;
import org.evenhand.model.Place;
import org.evenhand.model.Publication;
import org.evenhand.model.Severity;
import org.evenhand.model.Subject;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;
import org.evenhand.quantity.UnitKind;
import org.evenhand.words.Words;

/** Takes the findings of one rule on one study, and knows which limit applies. */
public final class Report {

    private final RuleFacts facts;
    private final Optional<Publication> publication;
    private final Words words;
    private final List<Finding> findings = new ArrayList<>();

    Report(RuleFacts facts, Optional<Publication> publication) {
        this.facts = facts;
        this.publication = publication;
        this.words = Words.of(publication);
    }

    /** The words of the language that the findings are written in: that of the publication. */
    public Words words() {
        return words;
    }

    /**
     * A text for a finding, in the language of the publication.
     *
     * @param key of the message
     * @param arguments texts as they are, whole numbers, and numbers that are rounded as by {@link #number}
     */
    public String say(String key, Object... arguments) {
        return words.say(key, Stream.of(arguments).map(this::argument).toArray());
    }

    private Object argument(Object value) {
        if (value instanceof Double number) {
            return words.number(number(number));
        }
        if (value instanceof Quantity) {
            return words.number(value.toString());
        }
        return value instanceof LocalDate day ? words.day(day) : value;
    }

    /**
     * A limit as it applies: that of the method, else of the publication, else the rule's own.
     *
     * @param value in the unit in which it was asked for
     * @param limit as it is shown
     */
    public record Applied(double value, Limit limit) {}

    /**
     * The limit that applies to runs of a method.
     *
     * @param unit in which it is wanted
     */
    public Applied limit(Method method, Unit unit) {
        return limit(method, unit, facts.limit().orElseThrow());
    }

    /** As {@link #limit(Method, Unit)}, where the rule has another default for what is looked at. */
    public Applied limit(Method method, Unit unit, RuleFacts.DefaultLimit own) {
        return stated(method, unit).orElseGet(() -> applied(quantity(own.value()), unit, own.origin(words)));
    }

    /** The limit that the method, else the publication, states in a unit of this kind; nothing if neither does. */
    public Optional<Applied> stated(Method method, Unit unit) {
        Quantity ofMethod = method.tolerances().get(facts.id());
        if (ofMethod != null && ofMethod.unit().dimension().equals(unit.dimension())) {
            return Optional.of(applied(ofMethod, unit, ofMethod(method)));
        }
        Optional<Quantity> ofPublication = publication.map(p -> p.tolerances().get(facts.id()));
        if (ofPublication.isPresent() && ofPublication.get().unit().dimension().equals(unit.dimension())) {
            return Optional.of(applied(ofPublication.get(), unit, say("rule-origin.of-publication")));
        }
        return Optional.empty();
    }

    /** How the origin of a limit is told that a method states. */
    public String ofMethod(Method method) {
        return say("rule-origin.of-method", method.id());
    }

    /**
     * A limit that no method can replace.
     *
     * @param value as it is shown
     * @param origin what words call where it comes from
     */
    public Limit limit(String value, String origin) {
        return new Limit(value, say("rule-origin." + origin));
    }

    /** A limit may be a plain number, such as one of steps. */
    private static Quantity quantity(String text) {
        try {
            return Quantity.parseCount(text);
        } catch (MisreadException e) {
            throw new IllegalArgumentException(text, e);
        }
    }

    private static Applied applied(Quantity limit, Unit unit, String origin) {
        boolean isPoint = unit.kind() == UnitKind.POINT && limit.unit().kind() == UnitKind.POINT;
        double value = isPoint ? limit.in(unit) : limit.differenceIn(unit);
        return new Applied(value, new Limit(limit.toString(), origin));
    }

    /** Begins a finding at a place. */
    public Draft at(Place place, Subject subject) {
        return new Draft(place, subject);
    }

    /** What was found; a field that is missing in many places is told once, at the first of them. */
    List<Finding> findings() {
        Map<String, Long> open = findings.stream()
                .filter(f -> f.outcome() == Outcome.NOT_CHECKABLE)
                .distinct()
                .collect(Collectors.groupingBy(Finding::message, Collectors.counting()));
        Set<String> told = new HashSet<>();
        List<Finding> result = new ArrayList<>();
        for (Finding finding : findings.stream().sorted().distinct().toList()) {
            if (finding.outcome() != Outcome.NOT_CHECKABLE) {
                result.add(finding);
            } else if (told.add(finding.message())) {
                long more = open.get(finding.message()) - 1;
                result.add(
                        more == 0
                                ? finding
                                : finding.saying(words.say("rules.not-checkable-more", finding.message(), more)));
            }
        }
        return result;
    }

    /** A finding that is being written; {@link #found} or {@link #notCheckable} ends it. */
    public final class Draft {
        private final Place place;
        private final Subject subject;
        private Severity severity = facts.severity();
        private Optional<Limit> limit = Optional.empty();
        private String consequence = "";

        private Draft(Place place, Subject subject) {
            this.place = place;
            this.subject = subject;
        }

        /** Another severity than the rule's usual one. */
        public Draft as(Severity other) {
            severity = other;
            return this;
        }

        public Draft against(Limit heldAgainst) {
            limit = Optional.of(heldAgainst);
            return this;
        }

        /** What it means for the reader of the figures, in a sentence. */
        public Draft meaning(String sentence) {
            consequence = sentence;
            return this;
        }

        /**
         * Something is wrong.
         *
         * @param message what, with the value found
         * @param remedy what to do
         */
        public void found(String message, String remedy) {
            add(Outcome.FOUND, message, remedy);
        }

        /**
         * The rule cannot tell, because a field is missing.
         *
         * @param field which
         */
        public void notCheckable(String field, String remedy) {
            add(Outcome.NOT_CHECKABLE, words.say("rules.not-checkable", field), remedy);
        }

        private void add(Outcome outcome, String message, String remedy) {
            findings.add(new Finding(
                    facts.id(),
                    severity,
                    outcome,
                    place,
                    subject,
                    message,
                    limit,
                    consequence,
                    remedy,
                    Optional.empty()));
        }
    }

    /** A number for a message: four significant digits or all whole ones, no trailing zeros. */
    public static String number(double value) {
        BigDecimal exact = new BigDecimal(value);
        BigDecimal rounded = exact.round(new MathContext(Math.max(4, exact.precision() - exact.scale())));
        String text = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        return text.replace('-', '\u2212');
    }
}
