package org.evenhand.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.evenhand.model.Finding;
import org.evenhand.model.Limit;
import org.evenhand.model.Outcome;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Link;
import org.evenhand.page.words.Names;
import org.evenhand.words.Words;

/** The findings of one page: each with its address there, and as the caveat that stands beside figures. */
public final class FindingViews {

    /** What blocks first, then the graver; what was waived or could not be checked after what was found. */
    private static final Comparator<Finding> WORST_FIRST = Comparator.comparing(Finding::outcome, FindingViews::rank)
            .thenComparing(Finding::severity)
            .thenComparing(Finding::rule)
            .thenComparing(Comparator.naturalOrder());

    /** What a reader sees of a finding; two that look alike are one. */
    private record Seen(String rule, Outcome outcome, String place, String message) {
        static Seen of(Finding finding) {
            return new Seen(finding.rule(), finding.outcome(), finding.place().toString(), finding.message());
        }
    }

    private final String page;
    private final Words words;
    private final Map<Seen, org.evenhand.page.view.Finding> views = new LinkedHashMap<>();

    private FindingViews(String page, Words words) {
        this.page = page;
        this.words = words;
    }

    /**
     * @param page its path from the site's root
     * @param findings in any order
     */
    public static FindingViews of(String page, List<Finding> findings, Words words) {
        FindingViews all = new FindingViews(page, words);
        Map<String, Integer> numbers = new TreeMap<>();
        findings.stream()
                .sorted(WORST_FIRST)
                .forEach(finding -> all.views.computeIfAbsent(
                        Seen.of(finding), seen -> all.view(finding, numbers.merge(finding.rule(), 1, Integer::sum))));
        return all;
    }

    /** As the page lists them: the worst first. */
    public List<org.evenhand.page.view.Finding> all() {
        return List.copyOf(views.values());
    }

    /** Where a finding of this page stands, counted from the site's root; its rule if the page does not show it. */
    public Link address(Finding finding, String text) {
        org.evenhand.page.view.Finding view = views.get(Seen.of(finding));
        return view == null ? rule(finding.rule()) : Link.to(text, page + "#" + view.id());
    }

    /**
     * What must travel with a figure: one caveat for each rule, the worst first. Several findings of one rule are
     * told by the first of them and the number of the others.
     */
    public List<Caveat> caveats(List<Finding> ofFigure) {
        Map<String, List<Finding>> byRule = new LinkedHashMap<>();
        ofFigure.stream()
                .sorted(WORST_FIRST)
                .forEach(f -> byRule.computeIfAbsent(f.rule(), rule -> new ArrayList<>())
                        .add(f));
        List<Caveat> caveats = new ArrayList<>();
        byRule.forEach((rule, many) -> {
            caveats.add(Caveat.of(rule, told(many, words), address(many.get(0), rule)));
        });
        return caveats;
    }

    /** Findings in the order in which they are shown. */
    public static List<Finding> worstFirst(List<Finding> findings) {
        return findings.stream().sorted(WORST_FIRST).toList();
    }

    /** Several findings of one rule in a few words: the first of them, and how many more there are. */
    public static String told(List<Finding> ofOneRule, Words words) {
        Finding first = ofOneRule.get(0);
        long others = ofOneRule.stream().map(Finding::message).distinct().count() - 1;
        String waived = first.outcome() == Outcome.WAIVED ? " " + words.say("page.waived") : "";
        String more = others == 0 ? "" : " " + words.say("finding.more", others, words.inWords((int) others));
        return Sentence.of(first.message()) + waived + more;
    }

    /** A rule, leading to what it means. */
    public static Link rule(String rule) {
        return Link.to(rule, Address.CAVEATS + "#" + Address.caveatGroup(rule));
    }

    private org.evenhand.page.view.Finding view(Finding finding, int number) {
        String waiver = finding.waiver()
                .map(w -> words.say("finding.waiver", Sentence.of(w.why()), w.by(), words.day(w.on())))
                .orElse("");
        String meaning = finding.consequence().isEmpty() ? "" : " " + Sentence.of(finding.consequence());
        return new org.evenhand.page.view.Finding(
                Address.finding(finding.rule(), number),
                rule(finding.rule()),
                finding.severity().word(),
                word(finding.outcome()),
                finding.place().toString(),
                Sentence.of(finding.message()) + meaning,
                finding.limit().map(l -> limit(l, words)).orElse(""),
                Sentence.of(finding.remedy()),
                waiver);
    }

    /** A limit with its origin. */
    public static String limit(Limit limit, Words words) {
        return words.say("finding.limit", Names.value(limit.value(), words), limit.origin());
    }

    private static String word(Outcome outcome) {
        return outcome.word().replace(' ', '-');
    }

    private static int rank(Outcome one, Outcome other) {
        return Integer.compare(rank(one), rank(other));
    }

    private static int rank(Outcome outcome) {
        return switch (outcome) {
            case FOUND -> 0;
            case WAIVED -> 1;
            case NOT_CHECKABLE -> 2;
        };
    }
}
