package org.evenhand.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.quantity.Quantity;

/**
 * A kind of thing tested.
 *
 * @param id its name in files and addresses
 * @param name as readers know it
 * @param kind what sort of thing it is
 * @param maker who makes it
 * @param specimens the physical examples at hand
 * @param unidentified why the specimens are not named, where they are not
 * @param obtained how they were come by ("bought"); absent if not said
 * @param limits what its maker states: temperature, supply-voltage, clock …
 * @param notes in Markdown
 * @param pictures of it
 * @param places where the fields stand
 */
public record Item(
        String id,
        String name,
        String kind,
        Optional<String> maker,
        List<String> specimens,
        Optional<String> unidentified,
        Optional<String> obtained,
        Map<String, Quantity> limits,
        Optional<String> notes,
        List<Picture> pictures,
        Places places) {

    public Item {
        specimens = List.copyOf(specimens);
        limits = Map.copyOf(limits);
        pictures = List.copyOf(pictures);
    }
}
