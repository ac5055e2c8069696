package org.evenhand.page.view;

import java.util.Optional;

/**
 * Text to copy: a citation or a quotation.
 *
 * @param id on the page
 * @param label what it is
 * @param text plain, with line breaks where they belong
 * @param evidence what it quotes
 */
public record Snippet(String id, String label, String text, Optional<Link> evidence) {}
