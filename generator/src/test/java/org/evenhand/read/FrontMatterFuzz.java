package org.evenhand.read;

/** Any bytes as a file in front matter; see {@link FileFuzz}. */
public final class FrontMatterFuzz {

    private FrontMatterFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        FileFuzz.read(data, "x.md");
    }
}
