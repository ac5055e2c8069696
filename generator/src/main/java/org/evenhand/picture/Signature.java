package org.evenhand.picture;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.regex.Pattern;
import org.evenhand.model.Limits;
import org.evenhand.model.Quota;

/** Tells by its first bytes what kind of picture a file is, whatever its name says. */
final class Signature {

    private static final Pattern MARKUP = Pattern.compile("\\uFEFF?\\s*+<[?!a-zA-Z].*", Pattern.DOTALL);

    private static final String SAVE = "save it as PNG (drawings) or JPEG (photographs)";

    private Signature() {}

    /** What of the file is to be decoded, its size in pixels held against the limit. */
    static Source read(byte[] bytes, String file, Limits limits) throws UnfitException {
        String kind = kind(bytes);
        String name = file.toLowerCase(Locale.ROOT);
        boolean named = kind.equals("PNG") ? name.endsWith(".png") : name.endsWith(".jpg") || name.endsWith(".jpeg");
        if (!named) {
            throw UnfitException.of(
                    "the picture is a " + kind + ", and its name says otherwise",
                    "let it end in " + (kind.equals("PNG") ? ".png" : ".jpg"));
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
            throw UnfitException.of("GIF is not shown: it may move, and holds 256 colours at most", SAVE);
        }
        if (begin.startsWith("RIFF") || begin.startsWith("ftyp", 4)) {
            throw UnfitException.of("WebP, HEIC and AVIF are not shown: the Java platform cannot decode them", SAVE);
        }
        String text = new String(bytes, 0, Math.min(bytes.length, 256), StandardCharsets.UTF_8);
        if (MARKUP.matcher(text).matches()) {
            throw UnfitException.of(
                    "this is SVG or other markup, which can run scripts and fetch from elsewhere; it is not shown",
                    SAVE);
        }
        throw UnfitException.of("this is no picture", SAVE);
    }

    /** @throws UnfitException if a picture of this size is not decoded */
    static void checkSize(long width, long height, Limits limits) throws UnfitException {
        if (!(width > 0 && height > 0)) {
            throw UnfitException.damaged("it says that it has no pixels");
        }
        if (width > limits.of(Quota.PICTURE_PIXELS) / height) {
            throw UnfitException.tooMuch(
                    "the picture has " + width + " × " + height + " pixels", limits, Quota.PICTURE_PIXELS);
        }
    }
}
