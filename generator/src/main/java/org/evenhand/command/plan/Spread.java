package org.evenhand.command.plan;

import java.util.OptionalInt;

/**
 * How much repeats scatter.
 *
 * @param deviation standard deviation of single values at a level, or of the differences within pairs
 * @param degreesOfFreedom on which it rests; absent if it was stated
 * @param origin where it comes from, in words
 */
record Spread(Amount deviation, OptionalInt degreesOfFreedom, String origin) {}
