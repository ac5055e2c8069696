/**
 * The command start: a first results folder of one's own.
 *
 * <p>A few names come in, from options or from a terminal; a small, sound results folder leaves, with made-up runs that
 * say so.
 */
package org.evenhand.command.start;
