package org.evenhand.page.answer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.model.Item;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Method;
import org.evenhand.model.Study;
import org.evenhand.page.Href;
import org.evenhand.page.LinkedData;
import org.evenhand.page.MediaTypes;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.Markup;
import org.evenhand.page.view.Unfolding;
import org.evenhand.quantity.Unit;
import org.evenhand.statistics.Interval;

/**
 * What an answer says to machines: the report as a data set, and each of its figures as an observation, with its interval
 * and, in words, its caveat. A refused comparison has no figure and is none. Source: schema.org, Dataset and Observation.
 */
final class AnswerData {

    private final Answer answer;

    private AnswerData(Answer answer) {
        this.answer = answer;
    }

    static Markup of(Answer answer, EvidenceFiles files, Unfolding unfolding) {
        AnswerData data = new AnswerData(answer);
        List<Map<String, Object>> graph = new ArrayList<>();
        graph.add(data.report(files, unfolding));
        answer.evidence().summaries().forEach(s -> data.observation(s).ifPresent(graph::add));
        answer.evidence().comparisons().forEach(c -> data.observation(c).ifPresent(graph::add));
        return LinkedData.of(graph);
    }

    private String address() {
        return answer.context().frames().permanent(answer.page());
    }

    private Map<String, Object> report(EvidenceFiles files, Unfolding unfolding) {
        Study study = answer.study();
        var publication = answer.context().publication();
        Link licence = answer.context().frames().licence();
        Map<String, Object> publisher = LinkedData.entity("Organization", "name", publication.publisher());
        List<Map<String, Object>> authors = study.authors().stream()
                .map(name -> LinkedData.entity("Person", "name", name))
                .toList();
        Map<String, Object> report = LinkedData.entity(
                "Dataset",
                "url",
                address(),
                "name",
                study.question(),
                "description",
                unfolding.description(),
                "identifier",
                study.id(),
                "version",
                Heads.version(study),
                "creativeWorkStatus",
                AnswerViews.status(study),
                "inLanguage",
                publication.language(),
                "license",
                licence.href().isEmpty() ? licence.text() : licence.href(),
                "creator",
                authors.isEmpty() ? publisher : authors,
                "publisher",
                publisher,
                "datePublished",
                unfolding.published(),
                "dateModified",
                unfolding.modified(),
                "temporalCoverage",
                tested(answer),
                "about",
                answer.items().stream().map(this::product).toList(),
                "measurementTechnique",
                answer.methods().stream().map(Method::title).toList(),
                "variableMeasured",
                study.measurands().stream().map(this::variable).toList(),
                "image",
                unfolding.picture().map(picture -> picture.path()),
                "distribution",
                files.byName().entrySet().stream()
                        .map(e -> download(e.getKey(), e.getValue()))
                        .toList());
        report.put("@id", address());
        return report;
    }

    /** First and last day of the runs as an interval of ISO 8601, a day alone as itself. */
    private static Optional<String> tested(Answer answer) {
        TreeSet<LocalDate> days = Heads.days(answer);
        if (days.isEmpty()) return Optional.empty();
        return Optional.of(days.size() == 1 ? days.first().toString() : days.first() + "/" + days.last());
    }

    private Map<String, Object> product(Item item) {
        return LinkedData.entity(
                "Product",
                "name",
                item.name(),
                "url",
                answer.context().frames().permanent(Address.item(item.id())),
                "category",
                item.kind());
    }

    private Map<String, Object> variable(MeasurandId id) {
        return LinkedData.entity(
                "PropertyValue",
                "name",
                answer.names().title(id),
                "propertyID",
                answer.names().address(id),
                "unitText",
                unit(answer.names().measurand(id).unit()));
    }

    private static String unit(Unit unit) {
        return unit.isOne() ? "" : unit.symbol();
    }

    private Map<String, Object> download(String name, byte[] bytes) {
        String path = answer.beside(name);
        return LinkedData.entity(
                "DataDownload",
                "name",
                EvidenceFiles.what(name, answer.words()),
                "contentUrl",
                answer.context().frames().permanent(Href.of(path)),
                "encodingFormat",
                MediaTypes.of(path),
                "contentSize",
                Integer.toString(bytes.length));
    }

    private Optional<Map<String, Object>> observation(LevelSummary s) {
        return s.mean().isEmpty()
                ? Optional.empty()
                : Optional.of(observation(
                        Quotable.of(answer, s),
                        Optional.of(s.measurand()),
                        s.mean().getAsDouble(),
                        unit(s.unit()),
                        s.interval().map(Interval::low),
                        s.interval().map(Interval::high)));
    }

    private Optional<Map<String, Object>> observation(ComparisonResult result) {
        if (answer.isRefused(result)) {
            return Optional.empty();
        }
        EvidenceTables.Numbers numbers = EvidenceTables.Numbers.of(result);
        OptionalDouble estimate = numbers.estimate();
        return estimate.isEmpty()
                ? Optional.empty()
                : Optional.of(observation(
                        Quotable.of(answer, result),
                        result.plan().measurand(),
                        estimate.getAsDouble(),
                        numbers.unit().equals("1") ? "" : numbers.unit(),
                        numbers.low(),
                        numbers.high()));
    }

    private Map<String, Object> observation(
            Quotable q,
            Optional<MeasurandId> measurand,
            double value,
            String unit,
            Optional<Double> low,
            Optional<Double> high) {
        Quoted quoted = Quoted.of(answer, q);
        Map<String, Object> observation = LinkedData.entity(
                "Observation",
                "name",
                q.subject(),
                "description",
                Quoted.lines(quoted.about() + ": " + quoted.claim() + quoted.behind(), quoted.caveat())
                        .replace('\n', ' '),
                "url",
                quoted.link(),
                "subjectOf",
                LinkedData.id(address()),
                "observationAbout",
                answer.items().stream().map(this::product).toList(),
                "measuredProperty",
                measurand.map(id ->
                        LinkedData.entity("Property", "name", answer.names().title(id))),
                "value",
                value,
                "unitText",
                unit,
                "minValue",
                low,
                "maxValue",
                high,
                "measurementTechnique",
                answer.methods().stream().map(Method::title).toList());
        observation.put("@id", quoted.link());
        return observation;
    }
}
