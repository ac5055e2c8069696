package org.evenhand.chart;

import java.util.List;
import java.util.Optional;

/**
 * One row of a chart of rows.
 *
 * @param label at the left
 * @param dots single values
 * @param estimate value with interval
 * @param band range shaded behind the row
 * @param floor value up to which the row is shaded from the left
 * @param figure first line at the right
 * @param verdict second line at the right
 * @param caveat note under the label, with a warning sign at the marks
 * @param instead text in place of marks
 */
record Row(
        String label,
        List<Dot> dots,
        Optional<Estimate> estimate,
        Optional<Interval> band,
        Optional<Double> floor,
        String figure,
        String verdict,
        String caveat,
        String instead) {

    Row(String label, List<Dot> dots, Optional<Estimate> estimate) {
        this(label, dots, estimate, Optional.empty(), Optional.empty(), "", "", "", "");
    }

    Row withFigure(String first, String second) {
        return new Row(label, dots, estimate, band, floor, first, second, caveat, instead);
    }

    Row withCaveat(String note) {
        return new Row(label, dots, estimate, band, floor, figure, verdict, note, instead);
    }

    Row withBand(Optional<Interval> shaded) {
        return new Row(label, dots, estimate, shaded, floor, figure, verdict, caveat, instead);
    }

    Row withFloor(Optional<Double> upTo) {
        return new Row(label, dots, estimate, band, upTo, figure, verdict, caveat, instead);
    }

    Row withInstead(String text) {
        return new Row(label, dots, estimate, band, floor, figure, verdict, caveat, text);
    }
}
