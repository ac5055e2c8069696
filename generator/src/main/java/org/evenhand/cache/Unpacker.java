package org.evenhand.cache;

import java.io.DataInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeMap;

/** Puts together what {@link Packer} took apart. */
final class Unpacker {

    private final DataInputStream in;
    private final List<Class<?>> classes = new ArrayList<>();

    Unpacker(DataInputStream in) {
        this.in = in;
    }

    Object get() throws IOException {
        return switch (Kind.of(in.readByte())) {
            case NULL -> null;
            case FALSE -> false;
            case TRUE -> true;
            case INT -> in.readInt();
            case LONG -> in.readLong();
            case CHAR -> in.readChar();
            case DOUBLE -> Double.longBitsToDouble(in.readLong());
            case TEXT -> text();
            case BIG_INTEGER -> new BigInteger(text());
            case BIG_DECIMAL -> new BigDecimal(new BigInteger(text()), in.readInt());
            case DATE -> LocalDate.parse(text());
            case DATE_AND_TIME -> OffsetDateTime.parse(text());
            case PERIOD -> Period.parse(text());
            case DOUBLES -> doubles();
            case INTS -> ints();
            case BYTES -> in.readNBytes(in.readInt());
            case ABSENT -> Optional.empty();
            case PRESENT -> Optional.of(get());
            case ABSENT_INT -> OptionalInt.empty();
            case PRESENT_INT -> OptionalInt.of(in.readInt());
            case ABSENT_LONG -> OptionalLong.empty();
            case PRESENT_LONG -> OptionalLong.of(in.readLong());
            case ABSENT_DOUBLE -> OptionalDouble.empty();
            case PRESENT_DOUBLE -> OptionalDouble.of(Double.longBitsToDouble(in.readLong()));
            case LIST -> list();
            case SET -> new LinkedHashSet<>(list());
            case MAP -> map(new LinkedHashMap<>());
            case SORTED_MAP -> map(new TreeMap<>());
            case ENUM -> constant();
            case RECORD -> record();
        };
    }

    private List<Object> list() throws IOException {
        int size = in.readInt();
        List<Object> values = new ArrayList<>(Math.min(size, 1 << 10));
        for (int i = 0; i < size; i++) {
            values.add(get());
        }
        return values;
    }

    private Map<Object, Object> map(Map<Object, Object> map) throws IOException {
        int size = in.readInt();
        for (int i = 0; i < size; i++) {
            Object key = get();
            map.put(key, get());
        }
        return map;
    }

    private Object constant() throws IOException {
        Class<?> type = type();
        String name = text();
        for (Object constant : type.getEnumConstants()) {
            if (((Enum<?>) constant).name().equals(name)) {
                return constant;
            }
        }
        throw new IllegalArgumentException(type + " has no " + name);
    }

    private Object record() throws IOException {
        Shape shape = Shape.of(type());
        Object[] components = new Object[shape.accessors().length];
        for (int i = 0; i < components.length; i++) {
            components[i] = get();
        }
        return shape.make(components);
    }

    private Class<?> type() throws IOException {
        int known = in.readInt();
        if (known < 0) {
            classes.add(Shape.named(text()));
            return classes.get(classes.size() - 1);
        }
        return classes.get(known);
    }

    private double[] doubles() throws IOException {
        double[] values = new double[in.readInt()];
        ByteBuffer.wrap(in.readNBytes(values.length * Double.BYTES))
                .asDoubleBuffer()
                .get(values);
        return values;
    }

    private int[] ints() throws IOException {
        int[] values = new int[in.readInt()];
        for (int i = 0; i < values.length; i++) {
            values[i] = in.readInt();
        }
        return values;
    }

    private String text() throws IOException {
        return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
    }
}
