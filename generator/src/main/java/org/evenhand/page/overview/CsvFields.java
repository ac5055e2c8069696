package org.evenhand.page.overview;

import java.util.List;
import java.util.Map;

/** What the columns of the data beside an answer hold, in the words of Table Schema. */
final class CsvFields {

    /**
     * A column.
     *
     * @param type of Table Schema
     * @param meaning in a phrase
     */
    record Field(String name, String type, String meaning) {}

    /** Columns by the name of the file, in their order. */
    static final Map<String, List<Field>> BY_FILE =
            Map.of("levels.csv", levels(), "comparisons.csv", comparisons(), "runs.csv", runs());

    private CsvFields() {}

    /** The columns that tell one row from all others. */
    static List<String> key(String file) {
        return switch (file) {
            case "levels.csv" -> List.of("level", "measurand");
            case "comparisons.csv" -> List.of("id");
            default -> List.of("study", "run", "measurand");
        };
    }

    private static List<Field> levels() {
        return List.of(
                new Field("level", "string", "level of the study's factor"),
                new Field("measurand", "string", "what is measured, by its id"),
                new Field("unit", "string", "symbol of the unit of mean, standard deviation and limits; 1 for none"),
                new Field("n", "integer", "how many values"),
                new Field("counts", "string", "what n counts: runs or specimens"),
                new Field("censored", "integer", "how many of them are bounds"),
                new Field("mean", "number", "mean"),
                new Field("standard-deviation", "number", "sample standard deviation"),
                new Field("low", "number", "lower limit of the interval of the mean"),
                new Field("high", "number", "upper limit of the interval of the mean"),
                new Field("confidence", "number", "of the interval, as a share of one"),
                new Field("type-a", "number", "standard uncertainty from repeats"),
                new Field("type-b", "number", "standard uncertainty from instruments"),
                new Field("median", "number", "median of the values"),
                new Field("median-low", "number", "lower limit of the interval of the median"),
                new Field("median-high", "number", "upper limit of the interval of the median"),
                new Field("written", "string", "the figure as the page writes it"),
                new Field("origin", "string", "empty if measured, else stated, external or estimated"),
                new Field("runs", "string", "ids of the runs behind it, parted by blanks"),
                new Field("caveats", "string", "rules that found something, parted by blanks"));
    }

    private static List<Field> comparisons() {
        return List.of(
                new Field("id", "string", "the comparison's id"),
                new Field("as", "string", "its kind, such as ratio or difference"),
                new Field("measurand", "string", "what is compared, by its id"),
                new Field("unit", "string", "symbol of the unit of estimate and limits; 1 for none"),
                new Field("level", "string", "the level compared"),
                new Field("against", "string", "the level that it is compared with"),
                new Field("estimate", "number", "the estimate; empty if the comparison is refused"),
                new Field("low", "number", "lower limit of its interval"),
                new Field("high", "number", "upper limit of its interval"),
                new Field("confidence", "number", "of the interval, as a share of one"),
                new Field("degrees-of-freedom", "number", "effective degrees of freedom"),
                new Field("p", "number", "probability of such an effect where there is none"),
                new Field("p-adjusted", "number", "the same, after Holm over the tests of the page"),
                new Field("verdict", "string", "differs, same-within-margin, not-shown or not-comparable; else empty"),
                new Field("written", "string", "the verdict as a sentence"),
                new Field("n", "string", "how many stand behind it, in words"),
                new Field("caveats", "string", "rules that found something, parted by blanks"));
    }

    private static List<Field> runs() {
        return List.of(
                new Field("run", "string", "the run's id within its study"),
                new Field("study", "string", "the study that it was made for"),
                new Field("level", "string", "level of the study's factor"),
                new Field("item", "string", "the test item's id"),
                new Field("specimen", "string", "the physical example"),
                new Field("started", "string", "date and time of its start, UTC"),
                new Field("outcome", "string", "completed, stopped, failed or excluded"),
                new Field("origin", "string", "empty if measured, else stated, external or estimated"),
                new Field("measurand", "string", "what was measured, by its id"),
                new Field("unit", "string", "symbol of the unit of value and uncertainty; 1 for none"),
                new Field("value", "any", "a number, or a word of the measurand's scale"),
                new Field("censored", "boolean", "whether the value is only a bound from below"),
                new Field("standard-uncertainty", "number", "of the single value"),
                new Field("written", "string", "the value as the page writes it"),
                new Field("caveats", "string", "rules that found something, parted by blanks"));
    }
}
