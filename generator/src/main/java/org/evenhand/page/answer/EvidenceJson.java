package org.evenhand.page.answer;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.evenhand.compare.LevelRun;
import org.evenhand.compare.LevelSummary;
import org.evenhand.measure.RunValue;
import org.evenhand.model.Finding;
import org.evenhand.model.MeasurandId;
import org.evenhand.page.words.Exact;
import org.evenhand.page.words.RunValues;
import org.evenhand.statistics.Estimate;
import org.evenhand.statistics.Interval;
import org.evenhand.words.Words;

/**
 * Writes {@code evidence.json}: what the page shows, at full precision. Every field of an entry's kind is there; what does
 * not exist is null. A withheld study has findings only, and a refused comparison no figures.
 */
final class EvidenceJson {

    private final JsonGenerator json;

    private EvidenceJson(JsonGenerator json) {
        this.json = json;
    }

    static byte[] of(Answer answer) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(
                        Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER))
                .withObjectIndenter(indenter)
                .withArrayIndenter(indenter);
        try (JsonGenerator generator = new JsonFactory().createGenerator(bytes)) {
            generator.setPrettyPrinter(printer);
            new EvidenceJson(generator).write(answer);
            generator.writeRaw('\n');
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    private void write(Answer answer) throws IOException {
        boolean withheld = answer.checked().isWithheld();
        json.writeStartObject();
        json.writeArrayFieldStart("summaries");
        for (LevelSummary summary :
                withheld ? List.<LevelSummary>of() : answer.evidence().summaries()) {
            write(answer, summary);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("comparisons");
        if (!withheld) {
            for (var result : answer.evidence().comparisons()) {
                new ComparisonJson(this, answer).write(result);
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("runs");
        for (LevelRun run : withheld ? List.<LevelRun>of() : answer.evidence().runs()) {
            write(answer, run);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("findings");
        for (Finding finding : answer.checked().findings()) {
            write(finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void write(Answer answer, LevelSummary s) throws IOException {
        json.writeStartObject();
        text("level", s.level());
        text("measurand", answer.names().address(s.measurand()));
        text("unit", s.unit().symbol());
        number("n", s.n());
        text("counts", s.counts().word());
        number("mean", s.mean());
        number("standardDeviation", s.standardDeviation());
        interval(s.interval());
        number("confidence", s.interval().map(i -> LevelSummary.CONFIDENCE));
        number("typeA", s.estimate().map(Estimate::typeA));
        number("typeB", EvidenceTables.typeB(s));
        number("median", s.median());
        number("medianLow", s.medianInterval().map(Interval::low));
        number("medianHigh", s.medianInterval().map(Interval::high));
        texts("runs", s.runs());
        json.writeEndObject();
    }

    private void write(Answer answer, LevelRun run) throws IOException {
        json.writeStartObject();
        text("run", answer.name(run.run()));
        text("level", run.level());
        text("specimen", run.run().specimen().orElse(null));
        json.writeObjectFieldStart("values");
        for (MeasurandId id : answer.study().measurands()) {
            Optional<RunValue> value = run.value(id);
            if (value.isPresent()) {
                json.writeObjectFieldStart(answer.names().address(id));
                write(value.get(), answer.names().measurand(id).unit().symbol());
                json.writeEndObject();
            }
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private void write(RunValue value, String unit) throws IOException {
        if (value instanceof RunValue.Noted) {
            text("value", RunValues.number(value, Words.english()));
        } else if (value instanceof RunValue.AtLeast beyond) {
            number("value", OptionalDouble.of(beyond.bound()));
        } else if (value instanceof RunValue.AtMost below) {
            number("value", OptionalDouble.of(below.bound()));
        } else {
            number("value", value.number());
        }
        text("unit", unit);
        boolean atLeast = value instanceof RunValue.AtLeast;
        boolean atMost = value instanceof RunValue.AtMost;
        json.writeBooleanField("censored", atLeast || atMost);
        text("bound", atLeast ? "at least" : atMost ? "at most" : null);
        number(
                "standardUncertainty",
                value instanceof RunValue.Known known
                        ? OptionalDouble.of(known.standardUncertainty())
                        : OptionalDouble.empty());
    }

    private void write(Finding finding) throws IOException {
        json.writeStartObject();
        text("rule", finding.rule());
        text("severity", finding.severity().word());
        text("outcome", finding.outcome().word().replace(' ', '-'));
        text("file", finding.place().file());
        place("line", finding.place().line());
        place("column", finding.place().column());
        text("message", finding.message());
        json.writeEndObject();
    }

    void start() throws IOException {
        json.writeStartObject();
    }

    void startArray(String field) throws IOException {
        json.writeArrayFieldStart(field);
    }

    void endArray() throws IOException {
        json.writeEndArray();
    }

    void end() throws IOException {
        json.writeEndObject();
    }

    /** @param value null for what does not exist */
    void text(String field, String value) throws IOException {
        json.writeFieldName(field);
        if (value == null) {
            json.writeNull();
        } else {
            json.writeString(value);
        }
    }

    void texts(String field, List<String> values) throws IOException {
        json.writeArrayFieldStart(field);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }

    void number(String field, int value) throws IOException {
        json.writeNumberField(field, value);
    }

    void number(String field, OptionalDouble value) throws IOException {
        json.writeFieldName(field);
        if (value.isPresent()) {
            json.writeNumber(Exact.of(value.getAsDouble()));
        } else {
            json.writeNull();
        }
    }

    void number(String field, Optional<Double> value) throws IOException {
        number(field, value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty());
    }

    void interval(Optional<Interval> interval) throws IOException {
        number("low", interval.map(Interval::low));
        number("high", interval.map(Interval::high));
    }

    /** Lines and columns count from one; nought says that the whole is meant. */
    private void place(String field, int number) throws IOException {
        if (number > 0) {
            number(field, number);
        } else {
            json.writeNullField(field);
        }
    }
}
