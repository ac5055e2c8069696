package org.evenhand.model;

import java.util.Arrays;
import java.util.Optional;

/** Something of which only so much is read. Its default is far beyond honest use. */
public enum Quota {
    FILE_BYTES("file-bytes", 4_000_000, "bytes of a structured file or a text"),
    FILE_DEPTH("file-depth", 50, "groups and lists within each other"),
    FILE_VALUES("file-values", 200_000, "fields and values in one file"),
    VALUE_CHARACTERS("value-characters", 1_000_000, "characters of one value"),
    NUMBER_DIGITS("number-digits", 100, "digits in a row"),
    PROSE_CHARACTERS("prose-characters", 100_000, "characters of a text behind front matter"),
    FILE_SECONDS("file-seconds", 600, "seconds spent on reading one file"),
    FOLDER_ENTRIES("folder-entries", 100_000, "entries of one folder"),
    STUDY_RUNS("study-runs", 20_000, "run files of one study"),
    STUDY_FILES("study-files", 50_000, "files of one study: runs, logs and pictures"),
    LOG_BYTES("log-bytes", 8L << 30, "bytes of a log, once it is decompressed"),
    LOG_ROWS("log-rows", 500_000_000, "samples of a log"),
    LOG_COLUMNS("log-columns", 1000, "columns of a log"),
    LINE_BYTES("line-bytes", 1 << 20, "bytes of a line of a log"),
    PICTURE_BYTES("picture-bytes", 20_000_000, "bytes of a picture"),
    PICTURE_PIXELS("picture-pixels", 40_000_000, "pixels of a picture");

    private final String id;
    private final long usual;
    private final String what;

    Quota(String id, long usual, String what) {
        this.id = id;
        this.usual = usual;
        this.what = what;
    }

    /** Under which people know it: "file-bytes". */
    public String id() {
        return id;
    }

    /** How much is read unless somebody says otherwise. */
    public long usual() {
        return usual;
    }

    /** What is counted, in the plural: "bytes of a structured file or a text". */
    public String what() {
        return what;
    }

    /** The one of this name. */
    public static Optional<Quota> named(String id) {
        return Arrays.stream(values()).filter(q -> q.id.equals(id)).findFirst();
    }

    /** What to do for more to be read, to stand behind another remedy. */
    public String raising() {
        return "or raise the limit: --limit " + id + "=NUMBER";
    }
}
