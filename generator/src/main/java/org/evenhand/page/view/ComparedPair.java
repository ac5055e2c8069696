package org.evenhand.page.view;

import java.util.List;
import java.util.Optional;

/**
 * Two levels held against each other.
 *
 * @param first key of the one level
 * @param second key of the other, which is the base
 * @param subject both by name
 * @param verdict "may-be-compared", or as in {@link ComparisonRow} where an answer holds the two against each other or
 *     they may not be compared
 * @param words what it came to, or why it may not be
 * @param reasons for which they may not be compared, each with the rule
 * @param caveats on the comparison
 * @param evidence where an answer holds the two against each other
 */
public record ComparedPair(
        String first,
        String second,
        String subject,
        String verdict,
        String words,
        List<Caveat> reasons,
        List<Caveat> caveats,
        Optional<Link> evidence) {
    public ComparedPair {
        reasons = List.copyOf(reasons);
        caveats = List.copyOf(caveats);
    }
}
