package org.evenhand.page.view;

/**
 * A file to fetch.
 *
 * @param file its name, leading to it
 * @param what it holds
 * @param size with its unit
 * @param sha256 64 hexadecimal digits; empty if the file is not under a digest
 */
public record FileRow(Link file, String what, String size, String sha256) {}
