package org.evenhand.read;

/** Any bytes as a file in JSON; see {@link FileFuzz}. */
public final class JsonFuzz {

    private JsonFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        FileFuzz.read(data, "x.json");
    }
}
