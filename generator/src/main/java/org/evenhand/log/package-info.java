/**
 * The logs of runs: files of samples come in, one sample after the other leaves, in the method's units.
 *
 * <p>A log is read once from front to back, in memory that does not depend on its length. What is wrong with it leaves
 * as findings that know file, line and column; nothing in a file makes this package fail.
 */
package org.evenhand.log;
