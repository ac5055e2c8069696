package org.evenhand.cache;

import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;

/**
 * How a class of records is taken apart and put together.
 *
 * @param type the class
 * @param accessors of its components, in order
 * @param constructor the canonical one
 */
record Shape(Class<?> type, Method[] accessors, Constructor<?> constructor) {

    private static final String OURS = "org.evenhand.";

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return Shape.made(type);
        }
    };

    /** @throws IllegalArgumentException if it is no record of this program */
    static Shape of(Class<?> type) {
        return SHAPES.get(type);
    }

    /** @throws IllegalArgumentException if there is no such class of this program */
    static Class<?> named(String name) {
        if (!name.startsWith(OURS)) {
            throw new IllegalArgumentException(name);
        }
        try {
            return Class.forName(name, false, Shape.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new IllegalArgumentException(name, e);
        }
    }

    private static Shape made(Class<?> type) {
        if (!type.isRecord() || !type.getName().startsWith(OURS)) {
            throw new IllegalArgumentException(type + " is not taken apart");
        }
        RecordComponent[] components = type.getRecordComponents();
        Method[] accessors = new Method[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            accessors[i] = components[i].getAccessor();
            accessors[i].setAccessible(true);
            types[i] = components[i].getType();
        }
        try {
            Constructor<?> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return new Shape(type, accessors, constructor);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("every record has a canonical constructor", e);
        }
    }

    Object component(Object record, int index) {
        try {
            return accessors[index].invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("a component of " + type + " cannot be read", e);
        }
    }

    Object make(Object[] components) {
        try {
            return constructor.newInstance(components);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException("no " + type + " can be made of this", e);
        }
    }
}
