/**
 * The command take-in: runs made of foreign logs.
 *
 * <p>Logs of any shape come in, with what their owner says of them; a run file, the untouched original and, where the log
 * reader needs it, a clean log leave.
 */
package org.evenhand.command.takein;
