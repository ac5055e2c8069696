/**
 * The command audit: whether a site is complete and unaltered, and what its figures have become.
 *
 * <p>A site comes in, with the results folder or another site to hold it against; differences leave.
 */
package org.evenhand.command.audit;
