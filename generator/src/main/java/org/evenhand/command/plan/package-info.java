/**
 * The command plan: how many repeats, and in which order.
 *
 * <p>A wanted resolution and a spread come in, or a number of repeats; the numbers, a run sheet to print and run files to
 * fill in leave.
 */
package org.evenhand.command.plan;
