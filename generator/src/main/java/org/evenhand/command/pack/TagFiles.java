package org.evenhand.command.pack;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;

/** The files of a package that tell of its payload. Source: RFC 8493, 2.1.1, 2.1.3, 2.2.1 and 2.2.2. */
final class TagFiles {

    private static final String DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

    private TagFiles() {}

    /**
     * All of them, by name.
     *
     * @param about the lines of bag-info.txt that the payload does not tell, by label
     */
    static SortedMap<String, byte[]> of(Payload payload, Map<String, String> about) {
        SortedMap<String, String> texts = new TreeMap<>();
        texts.put("bagit.txt", DECLARATION);
        texts.put("bag-info.txt", info(payload, about));
        texts.put("manifest-sha256.txt", manifest(payload.pieces(), Piece::sha256));
        texts.put("manifest-sha512.txt", manifest(payload.pieces(), Piece::sha512));
        SortedMap<String, Piece> told = new TreeMap<>();
        texts.forEach((name, text) -> told.put(name, piece(bytes(text))));
        texts.put("tagmanifest-sha256.txt", manifest(told, Piece::sha256));
        texts.put("tagmanifest-sha512.txt", manifest(told, Piece::sha512));
        SortedMap<String, byte[]> files = new TreeMap<>();
        texts.forEach((name, text) -> files.put(name, bytes(text)));
        return files;
    }

    private static String info(Payload payload, Map<String, String> about) {
        StringBuilder text = new StringBuilder();
        about.forEach((label, value) -> text.append(label)
                .append(": ")
                .append(value.replaceAll("[\\p{Cntrl}\\s]+", " ").strip())
                .append('\n'));
        return text.append("Payload-Oxum: ")
                .append(payload.bytes())
                .append('.')
                .append(payload.pieces().size())
                .append('\n')
                .toString();
    }

    /** Names that would have to be encoded are not packed. */
    private static String manifest(SortedMap<String, Piece> pieces, Function<Piece, String> digest) {
        StringBuilder text = new StringBuilder();
        pieces.forEach((path, piece) ->
                text.append(digest.apply(piece)).append("  ").append(path).append('\n'));
        return text.toString();
    }

    static Piece piece(byte[] bytes) {
        try {
            return Piece.of(Path.of(""), new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
