package org.evenhand.picture;

import java.io.IOException;
import java.io.InputStream;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/** Finds and reads the pictures of a results folder, and nothing outside it. */
public final class PictureFiles {

    private static final Pattern SCHEME = Pattern.compile("[A-Za-z][A-Za-z0-9+.-]*+:.*", Pattern.DOTALL);

    /** Decoding takes several bytes for each pixel: not for several pictures at a time. */
    private static final Object ONE_AT_A_TIME = new Object();

    private PictureFiles() {}

    /**
     * The file that the address of a picture in Markdown means.
     *
     * @param from the file in which it stands, relative to the results folder
     * @param address relative to that file, as in a link: with %20 for a space
     * @return relative to the results folder, without "." and ".."
     * @throws UnfitException if it is no address within the folder
     */
    public static String addressed(String from, String address) throws UnfitException {
        if (SCHEME.matcher(address).matches() || address.startsWith("//")) {
            throw UnfitException.of("elsewhere");
        }
        try {
            return within(from, URLDecoder.decode(address.replace("+", "%2B"), StandardCharsets.UTF_8));
        } catch (IllegalArgumentException e) {
            throw UnfitException.of("no-address", address);
        }
    }

    /** The file that a field means: the same, but that its path is taken letter by letter. */
    public static String within(String from, String path) throws UnfitException {
        boolean strange = path.startsWith("/")
                || path.indexOf('\\') >= 0
                || path.indexOf('\0') >= 0
                || SCHEME.matcher(path).matches();
        if (strange) {
            throw UnfitException.outside(path);
        }
        Deque<String> parts = new ArrayDeque<>(List.of(from.split("/")));
        parts.removeLast();
        for (String part : path.split("/")) {
            if (part.equals("..")) {
                if (parts.isEmpty()) {
                    throw UnfitException.outside(path);
                }
                parts.removeLast();
            } else if (!part.isEmpty() && !part.equals(".")) {
                parts.addLast(part);
            }
        }
        return String.join("/", parts);
    }

    /**
     * The name of a picture on the site: of small letters, digits and hyphens, and always a PNG.
     *
     * @param from the file in which it is named
     * @param file both relative to the results folder
     * @throws UnfitException if nothing is left of its name
     */
    public static String published(String from, String file) throws UnfitException {
        String folder = from.substring(0, from.lastIndexOf('/') + 1);
        String own = file.startsWith(folder) ? file.substring(folder.length()) : file;
        String name = own.toLowerCase(Locale.ROOT)
                .replaceFirst("\\.png$", "")
                .replaceAll("[^a-z0-9]++", "-")
                .replaceAll("^-|-$", "");
        if (name.isEmpty()) {
            throw UnfitException.of("no-name");
        }
        return name + ".png";
    }

    /**
     * Reads a picture.
     *
     * @param root of the results folder
     * @param file relative to it
     * @throws UnfitException if it is missing, outside, too large, damaged, or of a kind that is not shown
     */
    public static Pixels read(Path root, String file, Limits limits) throws UnfitException {
        byte[] bytes = bytes(root, file, limits);
        Source source = Signature.read(bytes, file, limits);
        synchronized (ONE_AT_A_TIME) {
            return Decoder.decode(source);
        }
    }

    private static byte[] bytes(Path root, String file, Limits limits) throws UnfitException {
        try {
            Path path = root.resolve(file);
            if (!Files.exists(path)) {
                throw UnfitException.of("none", file);
            }
            Path real = path.toRealPath();
            if (!real.startsWith(root.toRealPath())) {
                throw UnfitException.outside(file);
            }
            if (!Files.isRegularFile(real)) {
                throw UnfitException.of("no-file", file);
            }
            int most = limits.asInt(Quota.PICTURE_BYTES);
            try (InputStream in = Files.newInputStream(real)) {
                byte[] bytes = in.readNBytes(most + 1);
                if (bytes.length > most) {
                    throw UnfitException.tooMuch(limits, Quota.PICTURE_BYTES, "many-bytes", most);
                }
                return bytes;
            }
        } catch (IOException | InvalidPathException e) {
            throw UnfitException.of("unreadable");
        }
    }
}
