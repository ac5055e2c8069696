package org.evenhand.read;

import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads YAML 1.1 into a tree, from the parser's events: they alone show anchors, tags and how a scalar was written.
 *
 * <p>Anchors, aliases, merge keys and tags are refused. A scalar is text; {@code no} is the word "no".
 */
final class YamlTree {

    private YamlTree() {}

    /**
     * @param before how many lines stand before the text in its file
     * @throws UnreadableException if the text is not YAML, or uses what is refused
     */
    static Node read(String file, String text, int before, Limits limits, Faults faults) throws UnreadableException {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(limits.asInt(Quota.FILE_BYTES) + 1);
        // The tree builder has a limit of its own, with a message of its own.
        options.setNestingDepthLimit(limits.asInt(Quota.FILE_DEPTH) + 1);
        TreeBuilder tree = new TreeBuilder(limits, faults);
        int[] lineStarts = YamlSpelling.lineStarts(text);
        try {
            Parser parser = new ParserImpl(new StreamReader(text), options);
            boolean started = false;
            while (!parser.checkEvent(Event.ID.StreamEnd)) {
                Event event = parser.getEvent();
                if (event instanceof DocumentStartEvent) {
                    if (started) {
                        throw new UnreadableException(
                                Rules.FILE_UNREADABLE,
                                place(file, event.getStartMark(), before, 3),
                                "a second document begins here",
                                "keep one document in a file");
                    }
                    started = true;
                }
                take(file, text, lineStarts, event, before, tree);
            }
        } catch (MarkedYAMLException e) {
            throw notYaml(file, text, before, e);
        } catch (ReaderException e) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    Place.of(file),
                    String.format(
                            java.util.Locale.ROOT, "the character U+%04X may not stand in YAML", e.getCodePoint()),
                    "save the file as plain text in UTF-8");
        } catch (NumberFormatException e) {
            // The parser reads the digits of an escape that the end of the file cuts off.
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    new Place(file, before + lineStarts.length, 0, 1),
                    "the file ends within an escape in double quotes",
                    "finish the escape and the quotation, or write \\\\ for a backslash");
        } catch (YAMLException e) {
            throw new UnreadableException(
                    Rules.SIZE_LIMIT, Place.of(file), "the file exceeds what is read of YAML", "split the file");
        }
        return tree.root();
    }

    private static void take(String file, String text, int[] lineStarts, Event event, int before, TreeBuilder tree)
            throws UnreadableException {
        Mark mark = event.getStartMark();
        if (event instanceof AliasEvent) {
            throw refused(place(file, mark, before, 1), "an alias (*)");
        }
        if (event instanceof NodeEvent node && node.getAnchor() != null) {
            throw refused(place(file, mark, before, 1), "an anchor (&)");
        }
        if (event instanceof CollectionStartEvent start) {
            if (start.getTag() != null) {
                throw refused(place(file, mark, before, 1), "a tag (!)");
            }
            if (event.is(Event.ID.MappingStart)) {
                tree.startMapping(place(file, mark, before, 1));
            } else {
                tree.startSequence(place(file, mark, before, 1));
            }
        } else if (event.is(Event.ID.MappingEnd) || event.is(Event.ID.SequenceEnd)) {
            tree.end();
        } else if (event instanceof ScalarEvent scalar) {
            if (scalar.getTag() != null) {
                throw refused(place(file, mark, before, 1), "a tag (!)");
            }
            scalar(file, text, lineStarts, scalar, before, tree);
        }
    }

    private static void scalar(
            String file, String text, int[] lineStarts, ScalarEvent scalar, int before, TreeBuilder tree)
            throws UnreadableException {
        Mark start = scalar.getStartMark();
        Mark end = scalar.getEndMark();
        String value = scalar.getValue();
        int quotes = scalar.isPlain() ? 0 : 1;
        boolean verbatim = start.getLine() == end.getLine()
                && end.getColumn() - start.getColumn() == value.codePointCount(0, value.length()) + 2 * quotes
                && !scalar.isLiteral()
                && !scalar.isFolded();
        Place place = new Place(
                file,
                start.getLine() + 1 + before,
                start.getColumn() + 1 + (verbatim ? quotes : 0),
                Math.max(1, verbatim ? value.length() : 1));
        if (tree.wantsKey()) {
            if (value.equals("<<") && scalar.isPlain()) {
                throw refused(place, "a merge key (<<)");
            }
            tree.key(value, place);
        } else {
            // "~" and "null" are how YAML writes that there is no value.
            boolean none = scalar.isPlain() && (value.equals("~") || value.equals("null"));
            tree.scalar(
                    none || verbatim
                            ? new Node.Text(none ? "" : value, place, !none)
                            : new Node.Text(value, place, false, YamlSpelling.of(text, lineStarts, scalar, before)));
        }
    }

    private static UnreadableException refused(Place place, String what) {
        return new UnreadableException(
                Rules.FILE_UNREADABLE, place, what + " is not read here", "write the value out where it is needed");
    }

    private static UnreadableException notYaml(String file, String text, int before, MarkedYAMLException e) {
        Mark mark = e.getProblemMark();
        if (mark == null) {
            return new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    Place.of(file),
                    "this is not YAML: " + e.getProblem(),
                    "mend the punctuation");
        }
        Place place = place(file, mark, before, 1);
        String line = text.lines().skip(mark.getLine()).findFirst().orElse("");
        int indent = 0;
        while (indent < line.length() && line.charAt(indent) == ' ') {
            indent++;
        }
        if (indent < line.length() && line.charAt(indent) == '\t') {
            return new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    new Place(file, mark.getLine() + 1 + before, indent + 1, 1),
                    "a tab stands where YAML wants spaces",
                    "indent with spaces");
        }
        return new UnreadableException(
                Rules.FILE_UNREADABLE,
                place,
                "this is not YAML: " + e.getProblem(),
                "mend the indentation or punctuation at or just before this place; put a text with “: ” or “#” in quotes");
    }

    private static Place place(String file, Mark mark, int before, int length) {
        return new Place(file, mark.getLine() + 1 + before, mark.getColumn() + 1, length);
    }
}
