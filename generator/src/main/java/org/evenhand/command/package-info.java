/**
 * The command line: the only place that prints, asks for the time and ends the program.
 *
 * <p>Arguments come in; an exit status leaves, with results on standard output and messages on standard error. Nothing
 * knows this package.
 */
package org.evenhand.command;
