package org.evenhand.page;

/**
 * A file of the site.
 *
 * @param size in bytes
 * @param sha256 of its bytes, 64 hexadecimal digits
 */
public record SiteFile(long size, String sha256) {}
