/**
 * Pages in, a folder out: the only part that writes, and it writes all or nothing.
 *
 * <p>A site is prepared beside its target and put in place by renames. Its manifest names every file that the program wrote;
 * nothing else is ever deleted or overwritten.
 */
package org.evenhand.site;
