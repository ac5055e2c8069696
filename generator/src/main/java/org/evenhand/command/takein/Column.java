package org.evenhand.command.takein;

import java.util.OptionalInt;

/**
 * Where a column of the method is found in a log.
 *
 * @param name in the method
 * @param field of the log, from 0
 * @param title of that field
 * @param unit in which it stands there
 * @param bit which bit of it is meant, from 0; absent if the whole number is
 * @param named how the field was found, in words
 */
record Column(String name, int field, String title, UnitGuess unit, OptionalInt bit, String named) {}
