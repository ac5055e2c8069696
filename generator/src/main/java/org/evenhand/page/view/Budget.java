package org.evenhand.page.view;

import java.util.List;

/**
 * The uncertainty budget of one published figure, after the GUM.
 *
 * @param id as {@link Address#budget} forms it
 * @param figure whose budget it is
 * @param unit of the standard uncertainties and contributions
 * @param rows one per source, largest contribution first
 * @param combined combined standard uncertainty
 * @param freedom effective degrees of freedom
 * @param coverage coverage factor
 * @param expanded expanded uncertainty
 */
public record Budget(
        String id,
        String figure,
        String unit,
        List<BudgetRow> rows,
        String combined,
        String freedom,
        String coverage,
        String expanded) {
    public Budget {
        rows = List.copyOf(rows);
    }
}
