package org.evenhand.prose;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/** The patterns that prose is looked through with: made of word lists, so that no source file shows them whole. */
public final class PatternsOfProse {

    private final Map<String, Pattern> found = new TreeMap<>();
    private final Map<Object, Boolean> seen = new IdentityHashMap<>();

    private PatternsOfProse() {}

    /** By language, class and field: "en QuantityScanner.start". */
    public static Map<String, Pattern> all() {
        Map<String, Pattern> all = new TreeMap<>();
        for (String language : List.of("en", "de")) {
            PatternsOfProse patterns = new PatternsOfProse();
            Context context = new Context(new FixedEvidence(language));
            context.quantified();
            context.kind();
            context.thanLevel();
            Side one = Side.of("none", Optional.of("spreader"), Optional.of("without a spreader"));
            Side other = Side.of("spreader", Optional.of("none"), Optional.of("with a spreader"));
            context.orientation(one, other);
            patterns.walk(context, "Context");
            patterns.found.forEach((name, pattern) -> all.put(language + " " + name, pattern));
        }
        return all;
    }

    private void walk(Object object, String name) {
        if (object == null || seen.put(object, true) != null) {
            return;
        }
        if (object instanceof Pattern pattern) {
            found.put(name, pattern);
        } else if (object instanceof Optional<?> optional) {
            optional.ifPresent(o -> walk(o, name));
        } else if (object instanceof Map<?, ?> map) {
            map.forEach((key, value) -> walk(value, name + (key instanceof Enum<?> ? " " + key : "")));
        } else if (object instanceof Collection<?> many) {
            many.forEach(o -> walk(o, name));
        } else if (object.getClass().getPackageName().equals(PatternsOfProse.class.getPackageName())
                && !object.getClass().isArray()
                && !(object instanceof Enum<?>)) {
            for (Field field : object.getClass().getDeclaredFields()) {
                if (!Modifier.isStatic(field.getModifiers())) {
                    walk(value(field, object), object.getClass().getSimpleName() + "." + field.getName());
                }
            }
        }
    }

    private static Object value(Field field, Object of) {
        try {
            field.setAccessible(true);
            return field.get(of);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}
