/**
 * What authors write, in; safe HTML and the faults of its sentences, out.
 *
 * <p>Prose is CommonMark with tables. A link whose address begins with {@code evidence:} or {@code given:} is bound to a
 * figure: the figure is written for the author, or what the author wrote is held against it. Nothing is decided here
 * about what a fault does; that is a matter of the checks. Words are data, by language, in the files beside this package.
 */
package org.evenhand.prose;
