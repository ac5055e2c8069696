package org.evenhand.command.audit;

/**
 * Something that is not as it should be.
 *
 * @param where a path from the site's root
 * @param what what is wrong with it
 */
public record Difference(String where, String what) implements Comparable<Difference> {

    @Override
    public int compareTo(Difference other) {
        int order = where.compareTo(other.where);
        return order != 0 ? order : what.compareTo(other.what);
    }

    @Override
    public String toString() {
        return where + ": " + what;
    }
}
