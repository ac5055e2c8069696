package org.evenhand.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.evenhand.model.Place;
import org.evenhand.model.Spelling;

/** A part of a document that knows where it stands. JSON and YAML become the same nodes. */
sealed interface Node {

    Place place();

    /** What the node is, in the words of a message. */
    String kind();

    /**
     * A scalar, as text: neither format's own idea of numbers, dates and truth plays a part.
     *
     * @param value what was written, without quotes
     * @param place of the first character within the quotes
     * @param verbatim whether the characters of the value stand in the file one by one, so that a part of the value has
     *     a place of its own
     * @param spelling where they stand if they do not; nothing if that is not known
     */
    record Text(String value, Place place, boolean verbatim, Optional<Spelling> spelling) implements Node {

        Text(String value, Place place, boolean verbatim) {
            this(value, place, verbatim, Optional.empty());
        }

        @Override
        public String kind() {
            return "a text";
        }

        /** The place of some characters of the value. */
        Place part(int start, int length) {
            return verbatim ? place.part(start, length) : place;
        }
    }

    /** Keys and values, in the order written. */
    record Mapping(Map<String, Entry> entries, Place place) implements Node {

        public Mapping {
            entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        }

        @Override
        public String kind() {
            return "a group of fields";
        }
    }

    /** A value with the place of its key. */
    record Entry(Place key, Node value) {}

    record Sequence(List<Node> elements, Place place) implements Node {

        public Sequence {
            elements = List.copyOf(elements);
        }

        @Override
        public String kind() {
            return "a list";
        }
    }
}
