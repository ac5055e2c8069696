package org.evenhand.page.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The uncertainty budgets of the sample, recomputed from what their rows print. Source: JCGM 100:2008, 5.1.2 and 6.2.1. */
class BudgetsAddUpTest {

    static List<Element> budgets() {
        List<Element> budgets = AnswerFiguresTest.studies()
                .flatMap(study -> SampleSite.page(study).select("table.budget").stream())
                .toList();
        assertTrue(budgets.size() > 20, budgets.size() + " budgets");
        return budgets;
    }

    @ParameterizedTest
    @MethodSource("budgets")
    void theSquaresOfTheRowsAddUpToTheCombinedOne(Element budget) {
        double squares = 0;
        double rounding = 0;
        double shares = 0;
        List<Element> rows = budget.select("tbody tr");
        for (Element row : rows) {
            String u = cell(row, "Standard uncertainty");
            squares += number(u) * number(u);
            rounding += half(u);
            shares += number(cell(row, "Share of variance"));
        }
        Element foot = budget.selectFirst("tfoot");
        String combined = cell(foot.child(0), "Standard uncertainty");
        assertEquals(number(combined), Math.sqrt(squares), half(combined) + rounding, budget.id());
        assertEquals(100, shares, 0.1 * rows.size(), budget.id());
        // U = k·u, each as printed.
        String expanded = cell(foot.child(1), "Expanded uncertainty");
        double k = Double.parseDouble(foot.child(1).selectFirst("th").text().replaceAll(".*k = ", ""));
        assertEquals(
                number(expanded),
                k * number(combined),
                half(expanded) + k * half(combined) + 0.005 * number(combined),
                budget.id());
    }

    private static String cell(Element row, String label) {
        return row.selectFirst("td[data-label=" + label + "]").text();
    }

    private static double number(String printed) {
        return Double.parseDouble(printed.replaceAll("[<\\s\u00a0%]", ""));
    }

    /** Half of the last digit; all of it where only a bound is printed. */
    private static double half(String printed) {
        String digits = printed.replaceAll("[<\\s\u00a0%]", "");
        int decimals = digits.contains(".") ? digits.length() - digits.indexOf('.') - 1 : 0;
        return (printed.contains("<") ? 1 : 0.5) * Math.pow(10, -decimals);
    }
}
