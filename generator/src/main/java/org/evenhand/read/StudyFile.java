package org.evenhand.read;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import org.evenhand.model.Comparison;
import org.evenhand.model.MeasurandId;
import org.evenhand.model.Revision;
import org.evenhand.model.Run;
import org.evenhand.model.Status;
import org.evenhand.model.Study;
import org.evenhand.model.Waiver;

/** studies/ID/study.md: one question; the body is the answer. */
final class StudyFile {

    private static final Shape COMPARISON = Shape.of("a comparison")
            .required(
                    "as",
                    Scalars.choice(
                            "difference",
                            "ratio",
                            "trend",
                            "time-until",
                            "proportion",
                            "failure-rate",
                            "geometric-mean"),
                    "what is computed")
            .optional("measurand", Scalars.MEASURAND_ID, "which is compared")
            .optional("level", Scalars.TEXT, "the level in question")
            .optional("against", Scalars.TEXT, "the level that is the base")
            .optional("same-within", Scalars.QUANTITY_OR_COUNT, "the margin within which a difference does not matter")
            .optional("paired-by", Scalars.ID_TEXT, "the setting, or specimen, by which runs form pairs")
            .optional("for", Scalars.quantityIn("s"), "the longer time for which a failure rate becomes a chance")
            .optional("of", Shape.listOf(Scalars.ID_TEXT), "the ratio comparisons that a geometric mean combines")
            .asking("as", "difference", "measurand", "level", "against")
            .asking("as", "ratio", "measurand", "level", "against")
            .asking("as", "time-until", "measurand", "level", "against")
            .asking("as", "trend", "measurand")
            .asking("as", "proportion", "measurand", "level")
            .asking("as", "failure-rate", "measurand", "level")
            .asking("as", "geometric-mean", "of");

    private static final Shape USES = Shape.of("a use of other runs")
            .required("study", Scalars.ID_TEXT, "the study whose runs are used")
            .optional("where", Shape.mapOf(Scalars.ID_TEXT, Scalars.TEXT), "which of them: settings and their values");

    private static final Shape STATED = Shape.of("a stated figure")
            .required("level", Scalars.TEXT, "the level that it is of")
            .required("measurand", Scalars.MEASURAND_ID, "which")
            .required("mean", Scalars.QUANTITY_OR_COUNT, "the mean of the runs, as it was worked out elsewhere");

    private static final Shape REVISION = Shape.of("a revision")
            .required("on", Scalars.DATE, "when")
            .required("what", Scalars.TEXT, "what changed")
            .required("why", Scalars.TEXT, "the reason");

    static final Shape SHAPE = Shape.of("a study")
            .optional("$schema", Scalars.TEXT, "the address of this schema, for editors")
            .required("study", Scalars.ID_TEXT, "its name in files and addresses; the folder is named alike")
            .required("question", Scalars.TEXT, "the question as somebody would ask it")
            .optional("short-answer", Scalars.TEXT, "one or two sentences in Markdown, with evidence links")
            .optional("method", Scalars.ID_TEXT, "the method of its runs")
            .optional("methods", Shape.listOf(Scalars.ID_TEXT), "the methods of its runs, if there are several")
            .required("factor", Scalars.ID_TEXT, "the one setting that is varied; or item, or specimen")
            .required("levels", Shape.listOf(Scalars.TEXT), "the values of the factor, in the order shown")
            .optional("planned-runs", Scalars.COUNT, "for each level")
            .required("measurands", Shape.listOf(Scalars.MEASURAND_ID), "what is shown, in this order")
            .optional("comparisons", Shape.mapOf(Scalars.ID_TEXT, COMPARISON), "what is compared with what")
            .optional(
                    "stated",
                    Shape.listOf(STATED),
                    "figures worked out elsewhere; each is computed again from the runs")
            .optional("changes-with-factor", Shape.listOf(Scalars.ID_TEXT), "settings that cannot but change with it")
            .optional("uses", Shape.listOf(USES), "runs that live in other studies")
            .optional("answered", Scalars.DATE, "when the answer was given")
            .required(
                    "status",
                    Scalars.choice("wanted", "draft", "final", "superseded", "withdrawn"),
                    "where the answer stands")
            .optional("by", Scalars.ID_TEXT, "the study that supersedes it")
            .optional("why", Scalars.TEXT, "why it was withdrawn")
            .optional("on", Scalars.DATE, "when it was superseded or withdrawn")
            .optional("revisions", Shape.listOf(REVISION), "what changed since it was first answered")
            .optional("authors", Shape.listOf(Scalars.TEXT), "who answers for it")
            .optional("caveats", Shape.listOf(Scalars.TEXT), "the author's own, in Markdown")
            .optional("waivers", Shape.listOf(RunFile.WAIVER), "findings that do not matter here, and who says so")
            .optional("pictures", Shape.listOf(ItemFile.PICTURE), "pictures of the set-up")
            .asking("status", "superseded", "by")
            .asking("status", "withdrawn", "why")
            .either("method", "methods");

    private StudyFile() {}

    /** What must be said about several fields together. */
    static void checkTogether(Fields f, Faults faults) {
        if (f.has("method") == f.has("methods")) {
            faults.add(
                    Rules.FIELD_MISSING,
                    f.mapping().place(),
                    "a study names one “method”, or several as “methods”",
                    "write method: and the name of one, or methods: and a list");
        }
        String status = f.text("status");
        if (status.equals("superseded") && !f.has("by")) {
            faults.add(
                    Rules.FIELD_MISSING,
                    f.node("status").place(),
                    "the study is superseded, but nothing says by what",
                    "add the newer study as “by”");
        }
        if (status.equals("withdrawn") && !f.has("why")) {
            faults.add(
                    Rules.FIELD_MISSING,
                    f.node("status").place(),
                    "the study is withdrawn, but nothing says why",
                    "add the reason as “why”");
        }
        f.named("comparisons").forEach((id, c) -> checkComparison(id, c, faults));
    }

    private static void checkComparison(String id, Fields f, Faults faults) {
        List<String> needed = switch (f.text("as")) {
            case "difference", "ratio", "time-until" -> List.of("measurand", "level", "against");
            case "trend" -> List.of("measurand");
            case "proportion", "failure-rate" -> List.of("measurand", "level");
            default -> List.of("of");
        };
        for (String field : needed) {
            if (!f.has(field)) {
                faults.add(
                        Rules.FIELD_MISSING,
                        f.mapping().place(),
                        "the comparison “" + id + "”, a " + f.text("as") + ", lacks the field “" + field + "”",
                        "add it");
            }
        }
    }

    static Study bind(Fields f, String body, int bodyLine, List<Run> runs) {
        List<String> methods = f.has("method") ? List.of(f.text("method")) : f.texts("methods");
        List<Comparison> comparisons = new ArrayList<>();
        f.named("comparisons").forEach((id, c) -> comparisons.add(comparison(id, c, methods)));
        return new Study(
                f.text("study"),
                f.text("question"),
                f.optionalText("short-answer"),
                methods,
                f.text("factor"),
                f.texts("levels"),
                f.has("planned-runs") ? OptionalInt.of(Integer.parseInt(f.text("planned-runs"))) : OptionalInt.empty(),
                f.texts("measurands").stream().map(m -> measurandId(m, methods)).toList(),
                comparisons,
                stated(f, methods),
                f.texts("changes-with-factor"),
                uses(f),
                f.optionalDate("answered"),
                Status.valueOf(f.text("status").toUpperCase(Locale.ROOT)),
                f.optionalText("by"),
                f.optionalText("why"),
                f.optionalDate("on"),
                revisions(f),
                f.texts("authors"),
                f.texts("caveats"),
                waivers(f),
                ItemFile.pictures(f),
                body,
                bodyLine,
                runs,
                f.places());
    }

    private static Comparison comparison(String id, Fields f, List<String> methods) {
        return new Comparison(
                id,
                Comparison.Kind.valueOf(f.text("as").toUpperCase(Locale.ROOT).replace('-', '_')),
                f.optional("measurand", m -> measurandId(m, methods)),
                f.optionalText("level"),
                f.optionalText("against"),
                f.optionalQuantity("same-within"),
                f.optionalText("paired-by"),
                f.optionalQuantity("for"),
                f.texts("of"));
    }

    /** "energy" is of the first method; "encode/energy" says its method itself. */
    static MeasurandId measurandId(String text, List<String> methods) {
        int slash = text.indexOf('/');
        return slash < 0
                ? new MeasurandId(methods.get(0), text)
                : new MeasurandId(text.substring(0, slash), text.substring(slash + 1));
    }

    private static List<Study.UsedRuns> uses(Fields f) {
        return f.groups("uses").stream()
                .map(u -> new Study.UsedRuns(u.text("study"), Map.copyOf(u.textByName("where"))))
                .toList();
    }

    private static List<Study.StatedFigure> stated(Fields f, List<String> methods) {
        return f.groups("stated").stream()
                .map(s -> new Study.StatedFigure(
                        s.text("level"), measurandId(s.text("measurand"), methods), Fields.quantity(s.text("mean"))))
                .toList();
    }

    private static List<Revision> revisions(Fields f) {
        return f.groups("revisions").stream()
                .map(r -> new Revision(LocalDate.parse(r.text("on")), r.text("what"), r.text("why")))
                .toList();
    }

    static List<Waiver> waivers(Fields f) {
        return f.groups("waivers").stream()
                .map(w -> new Waiver(w.text("rule"), w.text("why"), w.text("by"), LocalDate.parse(w.text("on"))))
                .toList();
    }
}
