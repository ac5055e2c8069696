package org.evenhand.read;

/** Any bytes as a file in YAML; see {@link FileFuzz}. */
public final class YamlFuzz {

    private YamlFuzz() {}

    public static void fuzzerTestOneInput(byte[] data) {
        FileFuzz.read(data, "x.yaml");
    }
}
