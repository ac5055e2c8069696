package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.stream.Stream;
import org.evenhand.compare.ComparisonResult;
import org.evenhand.compare.LevelSummary;
import org.evenhand.page.words.ComparisonFigures;
import org.evenhand.page.words.LevelFigures;
import org.evenhand.page.words.Written;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A figure that the program writes into a sentence is, letter by letter, the one of the table. */
class SentenceFiguresTest {

    static Stream<String> studies() {
        return SampleSite.CHECKED.studies().keySet().stream();
    }

    private static String written(Answer answer, String address) {
        return answer.context().prose().plain("[](<evidence:" + address + ">)", Optional.of(answer.checked()));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void thatOfALevel(String study) {
        Answer answer = SampleAnswers.of(study);
        for (LevelSummary summary : answer.evidence().summaries()) {
            Written table = LevelFigures.of(summary, answer.words());
            if (table.isAbsent()
                    || !answer.names().measurand(summary.measurand()).isNumeric()) {
                continue;
            }
            String address = "level/" + summary.level() + "/" + answer.names().address(summary.measurand());
            String sentence = written(answer, address);
            assertEquals(unbreaking(table.withUnit()), unbreaking(sentence), address);
            if (!table.low().isEmpty()) {
                String interval = written(answer, address + "?as=interval");
                String ends = table.withUnit(table.low()) + " to " + table.withUnit(table.high());
                assertTrue(unbreaking(interval).contains(unbreaking(ends)), interval + " of " + ends);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("studies")
    void thatOfADifferenceOrRatio(String study) {
        Answer answer = SampleAnswers.of(study);
        for (ComparisonResult result : answer.evidence().comparisons()) {
            Written table = ComparisonFigures.of(result, answer.words());
            if (!(result instanceof ComparisonResult.Contrasted) || answer.isRefused(result) || table.isAbsent()) {
                continue;
            }
            String sentence = written(answer, result.plan().id());
            String expected = table.withUnit().replaceFirst("%$", "percentage points");
            assertEquals(
                    unbreaking(expected), unbreaking(sentence), result.plan().id());
        }
    }

    private static String unbreaking(String text) {
        return text.replace('\u00a0', ' ').replace("\u2060", "");
    }
}
