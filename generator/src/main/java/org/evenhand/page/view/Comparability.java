package org.evenhand.page.view;

import java.util.List;

/**
 * What was equal between the sides of the comparisons, what differed, and what was refused.
 *
 * @param equal settings with one value throughout
 * @param differed settings with more than one value, the factor first
 * @param refused comparisons that the program would not make
 */
public record Comparability(List<Setting> equal, List<Setting> differed, List<Refusal> refused) {
    public Comparability {
        equal = List.copyOf(equal);
        differed = List.copyOf(differed);
        refused = List.copyOf(refused);
    }
}
