/**
 * Files in, immutable records out, with everything that was wrong with the files.
 *
 * <p>A file becomes a tree of located nodes; the tree is held against the declared shape of its kind, so that all faults
 * are found at once; only a faultless tree is bound to a record. Records are linked last, when all names are known.
 * Logs are not opened here.
 */
package org.evenhand.read;
