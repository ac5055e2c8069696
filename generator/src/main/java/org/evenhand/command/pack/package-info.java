/**
 * The command pack: a results folder and the site made of it as one file for an archive.
 *
 * <p>Two folders come in; a BagIt package (RFC 8493) in a zip leaves, the same bytes for the same folders.
 */
package org.evenhand.command.pack;
