package org.evenhand.page.answer;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Figure;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.LevelFigures;

/** The figures that carry an answer: those that the short answer points at, else the first comparison. */
final class LeadingFigures {

    private static final Pattern EVIDENCE = Pattern.compile("\\(evidence:([^)?\\s]+)");

    private LeadingFigures() {}

    static List<Figure> of(Answer answer) {
        Set<String> addresses = new LinkedHashSet<>();
        Matcher links = EVIDENCE.matcher(answer.study().shortAnswer().orElse(""));
        while (links.find()) {
            addresses.add(URLDecoder.decode(links.group(1).replace("+", "%2B"), StandardCharsets.UTF_8));
        }
        List<Figure> figures = new ArrayList<>();
        addresses.forEach(a -> figure(answer, a).ifPresent(figures::add));
        if (figures.isEmpty() && !answer.counting().isEmpty()) {
            answer.evidence().comparisons().stream().findFirst().ifPresent(c -> figures.add(of(answer, c)));
        }
        return figures;
    }

    private static Optional<Figure> figure(Answer answer, String address) {
        if (address.startsWith("level/")) {
            return answer.evidence().summaries().stream()
                    .filter(s -> address.equals(
                                    "level/" + s.level() + "/" + s.measurand().measurand())
                            || address.equals("level/" + s.level() + "/" + s.measurand()))
                    .filter(s -> s.n() > 0)
                    .findFirst()
                    .map(s -> of(answer, s));
        }
        String id = address.contains("/") ? address.substring(0, address.indexOf('/')) : address;
        return answer.evidence().comparison(id).map(c -> of(answer, c));
    }

    private static Figure of(Answer answer, LevelSummary summary) {
        String mean = LevelFigures.of(summary, answer.words()).withUnit();
        Quotable quotable = Quotable.of(answer, summary);
        return new Figure(
                answer.names().title(summary.measurand()) + ", "
                        + answer.names().under(summary.level()),
                mean.isEmpty() ? LevelFigures.label(summary, answer.words()) : mean,
                quotable.interval(),
                quotable.n(),
                "",
                Optional.of(evidence(answer, quotable.id())),
                caveats(answer, answer.caveats(summary)));
    }

    private static Figure of(Answer answer, ComparisonResult result) {
        Quotable quotable = Quotable.of(answer, result);
        return new Figure(
                answer.names().subject(result.plan()),
                quotable.figure(),
                quotable.interval(),
                quotable.n(),
                quotable.base(),
                Optional.of(evidence(answer, quotable.id())),
                caveats(answer, answer.caveats(result)));
    }

    private static Link evidence(Answer answer, String id) {
        return Link.to(answer.words().say("quote.evidence"), answer.page() + "#" + id);
    }

    private static List<Caveat> caveats(Answer answer, List<Caveat> found) {
        List<Caveat> all = new ArrayList<>(found);
        answer.authorsCaveats().forEach(c -> all.add(Caveat.note(c)));
        return Shortened.of(answer, all);
    }
}
