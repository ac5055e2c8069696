package org.evenhand.page.answer;

import java.util.List;

/**
 * A table of the page as others may take it: its words and its figures as written, without its looks.
 *
 * @param id of the table on the page
 * @param caption what it shows
 * @param note how to read it; empty for none
 * @param columns their headings, with units
 * @param rows as many cells each as there are columns; empty for what does not exist
 */
record Grid(String id, String caption, String note, List<Column> columns, List<List<String>> rows) {

    /** @param number whether it holds figures, which are set to the right */
    record Column(String title, boolean number) {

        static Column text(String title) {
            return new Column(title, false);
        }

        static Column number(String title) {
            return new Column(title, true);
        }

        /** A unit in brackets behind the title, as the page has it. */
        static Column number(String title, String unit) {
            return new Column(unit.isEmpty() ? title : title + " [" + unit + "]", true);
        }
    }

    Grid {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(id + " has " + columns.size() + " columns, and a row of " + row);
            }
        }
    }

    /** The same without columns that no row fills. */
    Grid filled() {
        List<Integer> kept = new java.util.ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int column = i;
            if (rows.stream().anyMatch(row -> !row.get(column).isEmpty())) {
                kept.add(i);
            }
        }
        return new Grid(
                id,
                caption,
                note,
                kept.stream().map(columns::get).toList(),
                rows.stream().map(row -> kept.stream().map(row::get).toList()).toList());
    }
}
