package org.evenhand.page.view;

/**
 * One source of uncertainty.
 *
 * @param source where it comes from
 * @param type {@code A} or {@code B}
 * @param distribution such as "Student t" or "rectangular"
 * @param standardUncertainty in the unit of the budget
 * @param freedom degrees of freedom
 * @param share of the combined variance, as a percentage
 * @param note such as "common to both sides: cancels"; empty for none
 */
public record BudgetRow(
        String source,
        String type,
        String distribution,
        String standardUncertainty,
        String freedom,
        String share,
        String note) {}
