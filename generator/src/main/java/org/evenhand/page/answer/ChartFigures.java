package org.evenhand.page.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.chart.Figure;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.MeasurandId;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;

/** The charts of a page: those of the comparisons first, since they carry the answer, then each measurand by level. */
final class ChartFigures {

    private final Answer answer;
    private final List<DrawnChart> charts = new ArrayList<>();

    private ChartFigures(Answer answer) {
        this.answer = answer;
    }

    static List<DrawnChart> of(Answer answer) {
        ChartFigures figures = new ChartFigures(answer);
        figures.ofLevels();
        figures.ofComparisons();
        return figures.charts;
    }

    private void ofLevels() {
        for (MeasurandId id : answer.study().measurands()) {
            List<LevelSummary> levels = answer.evidence().summaries().stream()
                    .filter(s -> s.measurand().equals(id))
                    .toList();
            if (levels.stream().noneMatch(s -> s.n() > 0) || isCounted(id)) {
                continue;
            }
            LevelCharts drawing = new LevelCharts(answer, id, levels);
            String title = answer.names().title(id);
            put(
                    name(answer, id),
                    answer.words().say("chart.by-factor", title, answer.names().factor()),
                    drawing.description(),
                    drawing.figure(),
                    drawing.source(),
                    EvidenceFiles.RUNS,
                    levels.stream().map(answer::caveats).toList());
        }
    }

    /** The name of the chart of a measurand by level. */
    static String name(Answer answer, MeasurandId id) {
        return Address.slug(answer.names().address(id));
    }

    /** Failures are drawn as a rate with its bound; dots at nought would say that there are none. */
    private boolean isCounted(MeasurandId id) {
        return answer.evidence().comparisons().stream()
                .anyMatch(c -> c instanceof ComparisonResult.FailureRate r
                        && r.interval().isPresent()
                        && r.plan().measurand().filter(id::equals).isPresent());
    }

    private void ofComparisons() {
        Map<String, List<ComparisonResult.Contrasted>> contrasts = new LinkedHashMap<>();
        List<ComparisonResult.Share> shares = new ArrayList<>();
        List<ComparisonResult.FailureRate> rates = new ArrayList<>();
        for (ComparisonResult result : answer.evidence().comparisons()) {
            if (result instanceof ComparisonResult.Contrasted r) {
                contrasts
                        .computeIfAbsent(ContrastCharts.group(answer, r), g -> new ArrayList<>())
                        .add(r);
            } else if (result instanceof ComparisonResult.Share r) {
                shares.add(r);
            } else if (result instanceof ComparisonResult.FailureRate r) {
                rates.add(r);
            } else if (result instanceof ComparisonResult.Trend r && !r.points().isEmpty()) {
                put(r, TrendCharts.figure(answer, r), TrendCharts.source(answer, r));
            } else if (result instanceof ComparisonResult.Survival r) {
                TimeCharts.figure(answer, r)
                        .ifPresent(f -> put(r, f, answer.words().say("chart.curve-falls")));
            }
        }
        // Where all is refused there is nothing to draw; the table says why.
        contrasts.values().removeIf(many -> many.stream().allMatch(answer::isRefused));
        contrasts.forEach((group, many) -> put(
                "comparisons-" + group,
                ContrastCharts.title(answer, many),
                sentences(many),
                ContrastCharts.figure(answer, many),
                ContrastCharts.source(answer, many),
                EvidenceFiles.COMPARISONS,
                caveats(many)));
        if (shares.stream().anyMatch(s -> s.n() > 0)) {
            put(
                    "shares",
                    CountCharts.sharesTitle(answer, shares),
                    sentences(shares),
                    CountCharts.shares(answer, shares),
                    "",
                    EvidenceFiles.COMPARISONS,
                    caveats(shares));
        }
        if (rates.stream().anyMatch(r -> r.interval().isPresent())) {
            put(
                    "rates",
                    CountCharts.ratesTitle(answer, rates),
                    sentences(rates),
                    CountCharts.rates(answer, rates),
                    "",
                    EvidenceFiles.COMPARISONS,
                    caveats(rates));
        }
    }

    private void put(ComparisonResult result, Figure figure, String source) {
        String id = result.plan().id();
        // A comparison may be called as a measurand is, whose chart has that name already.
        boolean taken = charts.stream().anyMatch(c -> c.name().equals(id));
        put(
                taken ? "comparison-" + id : id,
                answer.names().subject(result.plan()),
                sentences(List.of(result)),
                figure,
                source,
                EvidenceFiles.COMPARISONS,
                caveats(List.of(result)));
    }

    private void put(
            String name,
            String title,
            String description,
            Figure figure,
            String source,
            String data,
            List<List<Caveat>> caveats) {
        charts.add(new DrawnChart(name, title, description, figure, source, data, once(caveats)));
    }

    /** The text alternative: what each comparison came to, with its uncertainty. */
    private String sentences(List<? extends ComparisonResult> many) {
        List<String> sentences = new ArrayList<>();
        for (ComparisonResult result : many) {
            Quotable q = Quotable.of(answer, result);
            String interval = q.interval().isEmpty() ? "" : " (" + q.interval() + ")";
            String further = q.further().isEmpty() ? "" : " " + q.further();
            sentences.add(q.about() + ": " + q.claim() + interval + "." + further);
        }
        return String.join(" ", sentences);
    }

    private List<List<Caveat>> caveats(List<? extends ComparisonResult> many) {
        return many.stream().map(r -> answer.caveats(r)).toList();
    }

    /** Each caveat once, in the order met, as far as there is room beside a chart. */
    private List<Caveat> once(List<List<Caveat>> many) {
        return Shortened.of(
                answer, many.stream().flatMap(List::stream).distinct().toList());
    }
}
