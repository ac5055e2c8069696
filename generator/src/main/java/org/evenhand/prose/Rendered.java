package org.evenhand.prose;

import java.util.List;

/**
 * A text as a page shows it.
 *
 * @param html safe to print as it is: it holds no element, attribute or address but those known here
 * @param faults addresses that lead nowhere, active content, and what is too large; in the order of the text
 */
public record Rendered(String html, List<ProseFault> faults) {

    public Rendered {
        faults = List.copyOf(faults);
    }
}
