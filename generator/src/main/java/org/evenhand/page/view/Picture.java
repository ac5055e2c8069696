package org.evenhand.page.view;

/**
 * A photograph or drawing.
 *
 * @param path from the site's root
 * @param width in pixels
 * @param height in pixels
 * @param shows what is to be seen: its text alternative and its caption
 * @param credit who made it, and its licence
 */
public record Picture(String path, int width, int height, String shows, String credit) {}
