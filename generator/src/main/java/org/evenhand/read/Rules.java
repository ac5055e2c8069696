package org.evenhand.read;

/** The names of the rules that reading itself applies; each has its explanation among the checks. */
public final class Rules {

    public static final String FILE_UNREADABLE = "file-unreadable";
    public static final String FIELD_MISSING = "field-missing";
    public static final String FIELD_UNKNOWN = "field-unknown";
    public static final String FIELD_DUPLICATE = "field-duplicate";
    public static final String FIELD_MALFORMED = "field-malformed";
    public static final String NUMBER_AMBIGUOUS = "number-ambiguous";
    public static final String UNIT_MISSING = "unit-missing";
    public static final String UNIT_UNKNOWN = "unit-unknown";
    public static final String UNIT_DIMENSION = "unit-dimension";
    public static final String DIFFERENCE_AS_POINT = "difference-as-point";
    public static final String REFERENCE_UNRESOLVED = "reference-unresolved";
    public static final String ID_COLLISION = "id-collision";
    public static final String PATH_OUTSIDE = "path-outside";
    public static final String SIZE_LIMIT = "size-limit";
    public static final String TEXT_DECEPTIVE = "text-deceptive";

    private Rules() {}
}
