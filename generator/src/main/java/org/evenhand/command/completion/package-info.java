/**
 * The command completion: scripts by which a shell completes commands, options and their values.
 *
 * <p>The description of the command line comes in; the text of a script leaves.
 */
package org.evenhand.command.completion;
