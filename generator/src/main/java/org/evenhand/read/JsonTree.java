package org.evenhand.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.evenhand.model.Limits;
import org.evenhand.model.Place;
import org.evenhand.model.Quota;

/** Reads JSON (RFC 8259) into a tree. */
final class JsonTree {

    private JsonTree() {}

    /** @throws UnreadableException if the text is not JSON, at the place where it stops being it */
    static Node read(String file, String text, Limits limits, Faults faults) throws UnreadableException {
        TreeBuilder tree = new TreeBuilder(limits, faults);
        try (JsonParser parser = factory(limits).createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (tree.root() != null) {
                    throw new UnreadableException(
                            Rules.FILE_UNREADABLE,
                            place(file, parser.currentTokenLocation(), 1),
                            "something stands behind the end of the document",
                            "delete it, or put it inside the outermost braces");
                }
                take(file, text, parser, token, tree);
            }
        } catch (StreamConstraintsException e) {
            throw new UnreadableException(
                    Rules.SIZE_LIMIT,
                    place(file, e.getLocation(), 1),
                    "the file exceeds what is read of JSON: " + firstLine(e),
                    "split the file or make the value shorter");
        } catch (JsonProcessingException e) {
            throw new UnreadableException(
                    Rules.FILE_UNREADABLE,
                    place(file, e.getLocation(), 1),
                    "this is not JSON: " + firstLine(e),
                    "mend the punctuation at or just before this place");
        } catch (IOException e) {
            throw new UncheckedIOException(e); // a string has no input errors
        }
        return tree.root();
    }

    /** Depth and lengths are seen to by the tree builder and before, with messages of their own. */
    private static JsonFactory factory(Limits limits) {
        return JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxNestingDepth(limits.asInt(Quota.FILE_DEPTH) + 1)
                        .maxStringLength(Integer.MAX_VALUE)
                        .maxNameLength(Integer.MAX_VALUE)
                        .maxNumberLength(Integer.MAX_VALUE)
                        .build())
                .build();
    }

    private static void take(String file, String text, JsonParser parser, JsonToken token, TreeBuilder tree)
            throws IOException, UnreadableException {
        JsonLocation at = parser.currentTokenLocation();
        switch (token) {
            case START_OBJECT -> tree.startMapping(place(file, at, 1));
            case START_ARRAY -> tree.startSequence(place(file, at, 1));
            case END_OBJECT, END_ARRAY -> tree.end();
            case FIELD_NAME ->
                tree.key(
                        parser.currentName(),
                        place(file, at, parser.currentName().length() + 2));
            case VALUE_NULL -> tree.scalar(new Node.Text("", place(file, at, 4), false));
            case VALUE_STRING -> {
                String value = parser.getText();
                int start = (int) at.getCharOffset() + 1;
                boolean verbatim = text.startsWith(value + '"', start);
                Place whole = place(file, at, Math.max(1, value.length()));
                tree.scalar(
                        verbatim
                                ? new Node.Text(
                                        value, new Place(file, whole.line(), whole.column() + 1, whole.length()), true)
                                : new Node.Text(value, whole, false, JsonSpelling.of(text, start, whole, value)));
            }
            default -> {
                String value = parser.getText();
                tree.scalar(new Node.Text(value, place(file, at, value.length()), true));
            }
        }
    }

    private static Place place(String file, JsonLocation at, int length) {
        return at == null
                ? Place.of(file)
                : new Place(file, Math.max(0, at.getLineNr()), Math.max(0, at.getColumnNr()), length);
    }

    /** The parser's own words, without its description of the source. */
    private static String firstLine(JsonProcessingException e) {
        String message = e.getOriginalMessage();
        int end = message.indexOf('\n');
        String line = end < 0 ? message : message.substring(0, end);
        int source = line.indexOf(" at [Source");
        return source < 0 ? line : line.substring(0, source);
    }
}
