package org.evenhand.model;

import java.util.Arrays;
import java.util.Optional;

/** Something of which only so much is read. Its default is far beyond honest use. */
public enum Quota {
    FILE_BYTES("file-bytes", 4_000_000),
    FILE_DEPTH("file-depth", 50),
    FILE_VALUES("file-values", 200_000),
    VALUE_CHARACTERS("value-characters", 1_000_000),
    NUMBER_DIGITS("number-digits", 100),
    PROSE_CHARACTERS("prose-characters", 100_000),
    FILE_SECONDS("file-seconds", 600),
    FOLDER_ENTRIES("folder-entries", 100_000),
    STUDY_RUNS("study-runs", 20_000),
    STUDY_FILES("study-files", 50_000),
    LOG_BYTES("log-bytes", 8L << 30),
    LOG_ROWS("log-rows", 500_000_000),
    LOG_COLUMNS("log-columns", 1000),
    LINE_BYTES("line-bytes", 1 << 20),
    PICTURE_BYTES("picture-bytes", 20_000_000),
    PICTURE_PIXELS("picture-pixels", 40_000_000);

    private final String id;
    private final long usual;

    Quota(String id, long usual) {
        this.id = id;
        this.usual = usual;
    }

    /** Under which people know it: "file-bytes". */
    public String id() {
        return id;
    }

    /** How much is read unless somebody says otherwise. */
    public long usual() {
        return usual;
    }

    /** The one of this name. */
    public static Optional<Quota> named(String id) {
        return Arrays.stream(values()).filter(q -> q.id.equals(id)).findFirst();
    }
}
