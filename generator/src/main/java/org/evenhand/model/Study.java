package org.evenhand.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.evenhand.quantity.Quantity;

/**
 * One question, its runs, its comparisons, its answer.
 *
 * @param id its name in files and addresses
 * @param question as somebody would ask it
 * @param shortAnswer one or two sentences in Markdown, with evidence links
 * @param methods by which its runs are done, at least one; the first is the default
 * @param factor the one setting that it varies; or "item", or "specimen"
 * @param levels the values of the factor, in the order in which they are shown
 * @param plannedRuns for each level
 * @param measurands in the order in which they are shown
 * @param comparisons in the order written
 * @param stated figures that the author gives, each to be borne out by runs
 * @param changesWithFactor settings that cannot but change with the factor
 * @param uses runs of other studies
 * @param answered when the answer was given
 * @param status where it stands
 * @param supersededBy the study that replaces it
 * @param why it was withdrawn
 * @param statusOn when it was superseded or withdrawn
 * @param revisions in the order written
 * @param authors who answer for it
 * @param caveats the author's own, in Markdown
 * @param waivers for all of its runs
 * @param pictures of the set-up
 * @param answer the body in Markdown
 * @param answerLine on which the body begins, from 1
 * @param runs in the order of their ids
 * @param places where the fields stand
 */
public record Study(
        String id,
        String question,
        Optional<String> shortAnswer,
        List<String> methods,
        String factor,
        List<String> levels,
        OptionalInt plannedRuns,
        List<MeasurandId> measurands,
        List<Comparison> comparisons,
        List<StatedFigure> stated,
        List<String> changesWithFactor,
        List<UsedRuns> uses,
        Optional<LocalDate> answered,
        Status status,
        Optional<String> supersededBy,
        Optional<String> why,
        Optional<LocalDate> statusOn,
        List<Revision> revisions,
        List<String> authors,
        List<String> caveats,
        List<Waiver> waivers,
        List<Picture> pictures,
        String answer,
        int answerLine,
        List<Run> runs,
        Places places) {

    /**
     * Runs of another study that this one uses instead of repeating them.
     *
     * @param study whose runs
     * @param where which of them: settings and their values
     */
    public record UsedRuns(String study, Map<String, String> where) {
        public UsedRuns {
            where = Map.copyOf(where);
        }
    }

    /**
     * A figure that was worked out elsewhere.
     *
     * @param level of the factor
     * @param measurand which
     * @param mean of the runs at the level
     */
    public record StatedFigure(String level, MeasurandId measurand, Quantity mean) {}

    public Study {
        methods = List.copyOf(methods);
        levels = List.copyOf(levels);
        measurands = List.copyOf(measurands);
        comparisons = List.copyOf(comparisons);
        stated = List.copyOf(stated);
        changesWithFactor = List.copyOf(changesWithFactor);
        uses = List.copyOf(uses);
        revisions = List.copyOf(revisions);
        authors = List.copyOf(authors);
        caveats = List.copyOf(caveats);
        waivers = List.copyOf(waivers);
        pictures = List.copyOf(pictures);
        runs = List.copyOf(runs);
    }

    /** The version of its answer: each revision makes a new one. */
    public int version() {
        return 1 + revisions.size();
    }
}
