package org.evenhand.cache;

/** What follows in packed bytes; the order is part of the format. */
enum Kind {
    NULL,
    FALSE,
    TRUE,
    INT,
    LONG,
    CHAR,
    DOUBLE,
    TEXT,
    BIG_INTEGER,
    BIG_DECIMAL,
    DATE,
    DATE_AND_TIME,
    PERIOD,
    DOUBLES,
    INTS,
    BYTES,
    ABSENT,
    PRESENT,
    ABSENT_INT,
    PRESENT_INT,
    ABSENT_LONG,
    PRESENT_LONG,
    ABSENT_DOUBLE,
    PRESENT_DOUBLE,
    LIST,
    SET,
    MAP,
    SORTED_MAP,
    ENUM,
    RECORD;

    private static final Kind[] ALL = values();

    static Kind of(int index) {
        if (index < 0 || index >= ALL.length) {
            throw new IllegalArgumentException("no kind " + index);
        }
        return ALL[index];
    }
}
