package org.evenhand.model;

import java.util.Optional;
import java.util.OptionalInt;
import org.evenhand.quantity.Unit;

/**
 * Where a column of the log comes from in a foreign file.
 *
 * @param from the header of the foreign column
 * @param unit in which it stands there; absent for a flag
 * @param bit which bit of an integer is meant, from 0; absent if the whole number is
 */
public record ColumnMapping(String from, Optional<Unit> unit, OptionalInt bit) {}
