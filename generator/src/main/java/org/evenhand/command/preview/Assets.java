package org.evenhand.command.preview;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The files that a preview adds to pages: they are served beside the site, and never published. */
final class Assets {

    /** Below this address stands what is the preview's own; no file of a site begins with a full stop. */
    static final String OWN = "/.preview/";

    static final String SCRIPT = OWN + "renew.js";
    static final String STYLE = OWN + "preview.css";

    private static final String PACKED = "/org/evenhand/preview/";

    private Assets() {}

    /** The file at an address, if it is one of these. */
    static Optional<byte[]> at(String address) {
        if (!address.equals(SCRIPT) && !address.equals(STYLE)) {
            return Optional.empty();
        }
        try (InputStream in = Assets.class.getResourceAsStream(PACKED + address.substring(OWN.length()))) {
            return Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
