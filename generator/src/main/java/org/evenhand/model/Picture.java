package org.evenhand.model;

/**
 * A picture of an item, a run or a study.
 *
 * @param file relative to the file that names it
 * @param shows what is to be seen, for those who cannot
 * @param by who made it
 * @param licence under which it may be used
 */
public record Picture(String file, String shows, String by, String licence) {}
