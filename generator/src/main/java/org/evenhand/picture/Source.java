package org.evenhand.picture;

/**
 * What of a file is decoded: the same picture without anything that is not needed to see it.
 *
 * @param format "png" or "jpeg"
 * @param bytes a file of this format, with neither metadata nor a profile, and with nothing behind its end
 * @param orientation 1 to 8, see {@link Pixels#upright}
 */
record Source(String format, byte[] bytes, int orientation) {}
