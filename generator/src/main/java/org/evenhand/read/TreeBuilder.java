package org.evenhand.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;

/** Puts the events of a parser together to a tree, within limits, and finds keys that are written twice. */
final class TreeBuilder {

    private final Limits limits;
    private final Faults faults;
    private final Deque<Open> open = new ArrayDeque<>();
    private Node root;
    private final Limits.Timing timing;
    private int nodes;

    TreeBuilder(Limits limits, Faults faults) {
        this.limits = limits;
        this.faults = faults;
        this.timing = limits.begin();
    }

    void startMapping(Place place) throws UnreadableException {
        push(new Open(place, true));
    }

    void startSequence(Place place) throws UnreadableException {
        push(new Open(place, false));
    }

    void end() {
        put(open.pop().close());
    }

    void key(String key, Place place) throws UnreadableException {
        count(place);
        checkLength(key, place);
        Open mapping = open.element();
        mapping.key = key;
        mapping.keyPlace = place;
    }

    void scalar(Node.Text text) throws UnreadableException {
        count(text.place());
        checkLength(text.value(), text.place());
        put(text);
    }

    private void checkLength(String text, Place place) throws UnreadableException {
        if (text.length() > limits.of(Quota.VALUE_CHARACTERS)) {
            throw limit(place, "this has " + text.length() + " characters", Quota.VALUE_CHARACTERS);
        }
    }

    /** Whether the next scalar of the innermost mapping is a key. */
    boolean wantsKey() {
        return !open.isEmpty() && open.element().isMapping && open.element().key == null;
    }

    /** The tree; null if nothing came. */
    Node root() {
        return root;
    }

    private void push(Open part) throws UnreadableException {
        count(part.place);
        if (wantsKey()) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    part.place,
                    "a group or a list stands where the name of a field is wanted",
                    "write a name; put a name that begins with a bracket in quotes");
        }
        if (open.size() >= limits.of(Quota.FILE_DEPTH)) {
            throw limit(part.place, "groups and lists stand too deep within each other", Quota.FILE_DEPTH);
        }
        open.push(part);
    }

    private void count(Place place) throws UnreadableException {
        nodes++;
        if (nodes > limits.of(Quota.FILE_VALUES)) {
            throw limit(place, "there are too many fields and values", Quota.FILE_VALUES);
        }
        if (nodes % 1024 == 0 && timing.isOver()) {
            throw limit(place, "reading has taken too long", Quota.FILE_SECONDS);
        }
    }

    private UnreadableException limit(Place place, String message, Quota quota) {
        return UnreadableException.tooMuch(place, message, limits, quota, "split the file, or make the value shorter");
    }

    private void put(Node node) {
        if (open.isEmpty()) {
            root = node;
            return;
        }
        Open parent = open.element();
        if (!parent.isMapping) {
            parent.elements.add(node);
            return;
        }
        Node.Entry before = parent.entries.putIfAbsent(parent.key, new Node.Entry(parent.keyPlace, node));
        if (before != null) {
            faults.add(
                    Rules.FIELD_DUPLICATE,
                    parent.keyPlace,
                    "“" + parent.key + "” is written twice; it stands on line "
                            + before.key().line() + " already",
                    "keep the one that is right and delete the other");
        }
        parent.key = null;
    }

    /** A mapping or sequence whose end has not come yet. */
    private static final class Open {
        private final Place place;
        private final boolean isMapping;
        private final Map<String, Node.Entry> entries = new LinkedHashMap<>();
        private final List<Node> elements = new ArrayList<>();
        private String key;
        private Place keyPlace;

        Open(Place place, boolean isMapping) {
            this.place = place;
            this.isMapping = isMapping;
        }

        Node close() {
            return isMapping ? new Node.Mapping(entries, place) : new Node.Sequence(elements, place);
        }
    }
}
