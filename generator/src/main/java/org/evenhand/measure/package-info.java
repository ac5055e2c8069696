/**
 * The values of runs: a run, its method and its log come in; one value for each measurand leaves, with what is known of
 * its uncertainty.
 *
 * <p>A log is read in one pass, and in a second where an order statistic or a long window asks for it. A value is a
 * pure function of the run's file, its method, its instruments and the bytes of its log.
 */
package org.evenhand.measure;
