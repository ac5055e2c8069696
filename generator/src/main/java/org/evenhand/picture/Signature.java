package org.evenhand.picture;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/** Tells by its first bytes what kind of picture a file is, whatever its name says. */
final class Signature {

    private static final Pattern MARKUP = Pattern.compile("\\uFEFF?\\s*+<[?!a-zA-Z].*", Pattern.DOTALL);

    private Signature() {}

    /** What of the file is to be decoded, its size in pixels held against the limit. */
    static Source read(byte[] bytes, String file, Limits limits) throws UnfitException {
        String kind = kind(bytes);
        String name = file.toLowerCase(Locale.ROOT);
        boolean named = kind.equals("PNG") ? name.endsWith(".png") : name.endsWith(".jpg") || name.endsWith(".jpeg");
        if (!named) {
            throw UnfitException.of(kind.equals("PNG") ? "is-png" : "is-jpeg");
        }
        return kind.equals("PNG") ? PngSource.read(bytes, limits) : JpegSource.read(bytes, limits);
    }

    /** @throws UnfitException unless it is PNG or JPEG */
    private static String kind(byte[] bytes) throws UnfitException {
        String begin = new String(bytes, 0, Math.min(bytes.length, 256), StandardCharsets.ISO_8859_1);
        if (begin.startsWith("\u0089PNG\r\n\u001a\n")) {
            return "PNG";
        }
        if (begin.startsWith("\u00ff\u00d8\u00ff")) {
            return "JPEG";
        }
        if (begin.startsWith("GIF8")) {
            throw UnfitException.of("gif");
        }
        if (begin.startsWith("RIFF") || begin.startsWith("ftyp", 4)) {
            throw UnfitException.of("undecodable");
        }
        String text = new String(bytes, 0, Math.min(bytes.length, 256), StandardCharsets.UTF_8);
        if (MARKUP.matcher(text).matches()) {
            throw UnfitException.of("markup");
        }
        throw UnfitException.of("no-picture");
    }

    /** @throws UnfitException if a picture of this size is not decoded */
    static void checkSize(long width, long height, Limits limits) throws UnfitException {
        if (!(width > 0 && height > 0)) {
            throw UnfitException.damaged("no-pixels");
        }
        if (width > limits.of(Quota.PICTURE_PIXELS) / height) {
            throw UnfitException.tooMuch(limits, Quota.PICTURE_PIXELS, "many-pixels", width, height);
        }
    }
}
