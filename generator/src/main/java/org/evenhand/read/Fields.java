package org.evenhand.read;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.evenhand.model.Place;
import org.evenhand.model.Places;
import org.evenhand.model.Spelling;
import org.evenhand.quantity.MisreadException;
import org.evenhand.quantity.Quantity;
import org.evenhand.quantity.Unit;

/** The fields of a mapping that has been found to be of its shape, as values. */
record Fields(Node.Mapping mapping) {

    boolean has(String name) {
        return mapping.entries().containsKey(name);
    }

    Node node(String name) {
        return mapping.entries().get(name).value();
    }

    String text(String name) {
        return value(node(name));
    }

    Optional<String> optionalText(String name) {
        return optional(name, Function.identity());
    }

    <T> Optional<T> optional(String name, Function<String, T> reading) {
        return has(name) ? Optional.of(reading.apply(text(name))) : Optional.empty();
    }

    Optional<Quantity> optionalQuantity(String name) {
        return optional(name, Fields::quantity);
    }

    Optional<LocalDate> optionalDate(String name) {
        return optional(name, LocalDate::parse);
    }

    List<String> texts(String name) {
        return has(name) ? sequence(name).stream().map(Fields::value).toList() : List.of();
    }

    /** The parts of a list of groups. */
    List<Fields> groups(String name) {
        return has(name)
                ? sequence(name).stream().map(n -> new Fields((Node.Mapping) n)).toList()
                : List.of();
    }

    /** The groups of a mapping with names of the user's own, in the order written. */
    Map<String, Fields> named(String name) {
        return map(name, node -> new Fields((Node.Mapping) node));
    }

    Map<String, String> textByName(String name) {
        return map(name, Fields::value);
    }

    Map<String, Quantity> quantityByName(String name) {
        return map(name, node -> quantity(value(node)));
    }

    <T> Map<String, T> map(String name, Function<Node, T> reading) {
        Map<String, T> result = new LinkedHashMap<>();
        if (has(name)) {
            ((Node.Mapping) node(name))
                    .entries()
                    .forEach((key, entry) -> result.put(key, reading.apply(entry.value())));
        }
        return result;
    }

    /** The places of all fields, however deep. */
    Places places() {
        Map<String, Place> byPath = new LinkedHashMap<>();
        Map<String, Spelling> spellings = new LinkedHashMap<>();
        collect("", mapping, byPath, spellings);
        return new Places(mapping.place(), byPath, spellings);
    }

    private static void collect(String path, Node node, Map<String, Place> byPath, Map<String, Spelling> spellings) {
        if (!path.isEmpty()) {
            byPath.put(path, node.place());
        }
        if (node instanceof Node.Text text) {
            text.spelling().ifPresent(spelling -> spellings.put(path, spelling));
        }
        String prefix = path.isEmpty() ? "" : path + "/";
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((name, entry) -> {
                collect(prefix + name, entry.value(), byPath, spellings);
                if (!(entry.value() instanceof Node.Text)) {
                    byPath.put(prefix + name, entry.key());
                }
            });
        } else if (node instanceof Node.Sequence sequence) {
            for (int i = 0; i < sequence.elements().size(); i++) {
                collect(prefix + i, sequence.elements().get(i), byPath, spellings);
            }
        }
    }

    private List<Node> sequence(String name) {
        return ((Node.Sequence) node(name)).elements();
    }

    static String value(Node node) {
        return ((Node.Text) node).value();
    }

    static Quantity quantity(String text) {
        try {
            return Quantity.parseCount(text);
        } catch (MisreadException e) {
            throw new IllegalStateException(e);
        }
    }

    static Unit unit(String text) {
        return Unit.of(text);
    }
}
