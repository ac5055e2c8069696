package org.evenhand.page.answer;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.evenhand.compare.LevelRun;
import org.evenhand.measure.RunValue;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Run;
import org.evenhand.page.Ids;
import org.evenhand.page.Sentence;
import org.evenhand.page.view.Address;
import org.evenhand.page.view.Caveat;
import org.evenhand.page.view.Link;
import org.evenhand.page.view.RunColumn;
import org.evenhand.page.view.RunRow;
import org.evenhand.page.view.RunTable;
import org.evenhand.page.words.Origins;
import org.evenhand.page.words.RunValues;
import org.evenhand.words.Phrase;

/** The table of every run's values. */
final class Runs {

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private Runs() {}

    static RunTable table(Answer answer) {
        List<RunColumn> columns = answer.study().measurands().stream()
                .map(id -> new RunColumn(
                        answer.names().title(id),
                        unit(answer.names().measurand(id).unit().symbol())))
                .toList();
        return new RunTable(
                columns,
                answer.evidence().runs().stream()
                        .sorted(Comparator.comparing(r -> answer.name(r.run()), Ids.ORDER))
                        .map(r -> row(answer, r))
                        .toList());
    }

    private static RunRow row(Answer answer, LevelRun run) {
        String name = answer.name(run.run());
        List<org.evenhand.page.view.RunValue> values = new ArrayList<>();
        for (MeasurandId id : answer.study().measurands()) {
            RunValue value = run.value(id)
                    .orElse(new RunValue.Missing(
                            "field-missing", Phrase.of("missing.no-measurand-of-run", id.measurand())));
            values.add(RunValues.view(
                    value, name, answer.names().address(id), run.run().origin(), answer.words()));
        }
        List<Caveat> caveats = new ArrayList<>(answer.findings().caveats(EvidenceTables.caveats(answer, run)));
        run.run().why().map(Sentence::of).map(Caveat::note).ifPresent(caveats::add);
        return new RunRow(
                Address.run(name),
                Link.to(name, Address.run(run.run().study(), run.run().id())),
                answer.names().level(run.level()),
                run.run().specimen().orElse("–"),
                run.run().started().map(Runs::stamp).orElse("–"),
                outcome(run.run()),
                values,
                caveats);
    }

    /** Date and time in UTC. */
    static String stamp(OffsetDateTime started) {
        return STAMP.format(started.withOffsetSameInstant(ZoneOffset.UTC));
    }

    static String outcome(Run run) {
        return run.outcome().name().toLowerCase(Locale.ROOT);
    }

    /** As it is written in a results folder: "measured". */
    static String origin(Run run) {
        String mark = Origins.mark(run.origin());
        return mark.isEmpty() ? "measured" : mark;
    }

    private static String unit(String symbol) {
        return symbol.equals("1") ? "" : symbol;
    }
}
