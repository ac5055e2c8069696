package org.evenhand.model;

import java.math.BigDecimal;
import org.evenhand.quantity.Quantity;

/** What a column is held against. */
public sealed interface Threshold {

    /** A quantity stated by the method. */
    record Fixed(Quantity quantity) implements Threshold {}

    /**
     * A multiple of a setting of the run.
     *
     * @param setting its name
     * @param times the factor
     */
    record OfSetting(String setting, BigDecimal times) implements Threshold {}
}
