package org.evenhand.cache;

import java.io.DataOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.Period;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.LongSupplier;

/** Takes values apart. */
final class Packer {

    /** Collections whose order differs from one run of the virtual machine to the next. */
    private static final String WITHOUT_ORDER = "java.util.ImmutableCollections";

    private final DataOutputStream out;
    private final Map<Class<?>, Integer> classes = new HashMap<>();

    Packer(DataOutputStream out) {
        this.out = out;
    }

    void put(Object value) throws IOException {
        if (value instanceof Record) {
            record(value);
        } else if (value instanceof Double d) {
            kind(Kind.DOUBLE);
            out.writeLong(Double.doubleToRawLongBits(d));
        } else if (value instanceof String text) {
            kind(Kind.TEXT);
            text(text);
        } else if (value instanceof Enum<?> e) {
            kind(Kind.ENUM);
            name(e.getDeclaringClass());
            text(e.name());
        } else if (value instanceof Collection<?> || value instanceof Map<?, ?>) {
            many(value);
        } else if (value instanceof LongSupplier) {
            kind(Kind.NULL); // a running clock: it says nothing about what is the case
        } else if (value == null || !(maybe(value) || scalar(value))) {
            if (value != null) {
                throw new IllegalArgumentException(value.getClass() + " is not taken apart");
            }
            kind(Kind.NULL);
        }
    }

    private void record(Object value) throws IOException {
        Shape shape = Shape.of(value.getClass());
        kind(Kind.RECORD);
        name(shape.type());
        for (int i = 0; i < shape.accessors().length; i++) {
            put(shape.component(value, i));
        }
    }

    private void many(Object value) throws IOException {
        if (value instanceof List<?> list) {
            kind(Kind.LIST);
            all(list);
        } else if (value instanceof Set<?> set) {
            kind(Kind.SET);
            all(isWithoutOrder(set) ? new TreeSet<>(set) : set);
        } else if (value instanceof Map<?, ?> map) {
            kind(map instanceof SortedMap ? Kind.SORTED_MAP : Kind.MAP);
            Map<?, ?> ordered = isWithoutOrder(map) ? new TreeMap<>(map) : map;
            out.writeInt(ordered.size());
            for (Map.Entry<?, ?> entry : ordered.entrySet()) {
                put(entry.getKey());
                put(entry.getValue());
            }
        } else {
            throw new IllegalArgumentException(value.getClass() + " is not taken apart");
        }
    }

    private static boolean isWithoutOrder(Object collection) {
        return collection.getClass().getName().startsWith(WITHOUT_ORDER)
                || collection.getClass() == HashMap.class
                || collection.getClass() == HashSet.class;
    }

    private void all(Collection<?> values) throws IOException {
        out.writeInt(values.size());
        for (Object value : values) {
            put(value);
        }
    }

    private boolean maybe(Object value) throws IOException {
        if (value instanceof Optional<?> maybe) {
            kind(maybe.isPresent() ? Kind.PRESENT : Kind.ABSENT);
            if (maybe.isPresent()) {
                put(maybe.get());
            }
        } else if (value instanceof OptionalDouble maybe) {
            kind(maybe.isPresent() ? Kind.PRESENT_DOUBLE : Kind.ABSENT_DOUBLE);
            if (maybe.isPresent()) {
                out.writeLong(Double.doubleToRawLongBits(maybe.getAsDouble()));
            }
        } else if (value instanceof OptionalInt maybe) {
            kind(maybe.isPresent() ? Kind.PRESENT_INT : Kind.ABSENT_INT);
            if (maybe.isPresent()) {
                out.writeInt(maybe.getAsInt());
            }
        } else if (value instanceof OptionalLong maybe) {
            kind(maybe.isPresent() ? Kind.PRESENT_LONG : Kind.ABSENT_LONG);
            if (maybe.isPresent()) {
                out.writeLong(maybe.getAsLong());
            }
        } else {
            return false;
        }
        return true;
    }

    private boolean scalar(Object value) throws IOException {
        if (value instanceof Integer i) {
            kind(Kind.INT);
            out.writeInt(i);
        } else if (value instanceof Long l) {
            kind(Kind.LONG);
            out.writeLong(l);
        } else if (value instanceof Boolean b) {
            kind(b ? Kind.TRUE : Kind.FALSE);
        } else if (value instanceof Character c) {
            kind(Kind.CHAR);
            out.writeChar(c);
        } else if (value instanceof BigInteger i) {
            kind(Kind.BIG_INTEGER);
            text(i.toString());
        } else if (value instanceof BigDecimal d) {
            kind(Kind.BIG_DECIMAL);
            text(d.unscaledValue().toString());
            out.writeInt(d.scale());
        } else if (value instanceof LocalDate date) {
            kind(Kind.DATE);
            text(date.toString());
        } else if (value instanceof OffsetDateTime time) {
            kind(Kind.DATE_AND_TIME);
            text(time.toString());
        } else if (value instanceof Period period) {
            kind(Kind.PERIOD);
            text(period.toString());
        } else if (value instanceof double[] doubles) {
            kind(Kind.DOUBLES);
            doubles(doubles);
        } else if (value instanceof byte[] bytes) {
            kind(Kind.BYTES);
            out.writeInt(bytes.length);
            out.write(bytes);
        } else if (value instanceof int[] ints) {
            kind(Kind.INTS);
            out.writeInt(ints.length);
            for (int i : ints) {
                out.writeInt(i);
            }
        } else {
            return false;
        }
        return true;
    }

    private void doubles(double[] values) throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(values.length * Double.BYTES);
        bytes.asDoubleBuffer().put(values);
        out.writeInt(values.length);
        out.write(bytes.array());
    }

    private void kind(Kind kind) throws IOException {
        out.writeByte(kind.ordinal());
    }

    /** A class by its name the first time, by a number from then on. */
    private void name(Class<?> type) throws IOException {
        Integer known = classes.putIfAbsent(type, classes.size());
        out.writeInt(known == null ? -1 : known);
        if (known == null) {
            text(type.getName());
        }
    }

    private void text(String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }
}
