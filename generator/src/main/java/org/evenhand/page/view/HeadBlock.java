package org.evenhand.page.view;

import java.util.List;

/**
 * The ruled block at the head of a test report: what this sheet is, and how it stands.
 *
 * @param kind of sheet, such as "Test report" or "Test item"
 * @param identification the id by which it is cited
 * @param version of this sheet; empty if it has none
 * @param status one of {@code wanted}, {@code draft}, {@code final}, {@code superseded}, {@code withdrawn},
 *     {@code withheld}; empty if it has none
 * @param entries dates, item, method and so on, in the order shown
 */
public record HeadBlock(String kind, String identification, String version, String status, List<Entry> entries) {
    public HeadBlock {
        entries = List.copyOf(entries);
    }
}
