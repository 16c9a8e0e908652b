package org.calicograph.wire;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.calicograph.drawing.Exhibit;

/**
 * Records as bytes: their components in order. A sealed family writes which of its kinds it is, a list
 * how long it is. Components may be text, whole and real numbers, truth values, enums, records, sealed
 * families, exhibits, and lists, maps and optionals of these; reading never makes anything else, so that bytes
 * from outside can't bring in a class of their own choosing.
 */
final class RecordFormat {

    private static final Map<Class<?>, Shape> SHAPES = new ConcurrentHashMap<>();
    private static final Map<Class<?>, List<Class<?>>> KINDS = new ConcurrentHashMap<>();

    private record Shape(Constructor<?> maker, Method[] getters, Type[] types) { }

    private RecordFormat() { }

    static byte[] bytes(Object value, Class<?> as) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream(256);
            write(new DataOutputStream(bytes), value, as);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static void write(DataOutputStream out, Object value, Type type) throws IOException {
        if (type instanceof ParameterizedType generic) {
            writeMany(out, value, generic);
        } else if (type == String.class) {
            text(out, (String) value);
        } else if (type == long.class) {
            out.writeLong((Long) value);
        } else if (type == int.class) {
            out.writeInt((Integer) value);
        } else if (type == double.class) {
            out.writeDouble((Double) value);
        } else if (type == boolean.class) {
            out.writeBoolean((Boolean) value);
        } else if (type == Exhibit.class) {
            byte[] bytes = ExhibitFormat.bytes((Exhibit) value);
            out.writeInt(bytes.length);
            out.write(bytes);
        } else if (value instanceof Enum<?> constant) {
            out.writeByte(constant.ordinal());
        } else {
            Class<?> family = (Class<?>) type;
            Class<?> kind = value.getClass();
            if (family.isSealed()) {
                out.writeByte(kinds(family).indexOf(kind));
            }
            Shape shape = shape(kind);
            for (int i = 0; i < shape.getters.length; i++) {
                write(out, get(shape.getters[i], value), shape.types[i]);
            }
        }
    }

    private static void writeMany(DataOutputStream out, Object value, ParameterizedType type) throws IOException {
        Type[] of = type.getActualTypeArguments();
        if (value instanceof List<?> list) {
            out.writeInt(list.size());
            for (Object each : list) {
                write(out, each, boxed(of[0]));
            }
        } else if (value instanceof Map<?, ?> map) {
            out.writeInt(map.size());
            for (Map.Entry<?, ?> each : map.entrySet()) {
                write(out, each.getKey(), of[0]);
                write(out, each.getValue(), of[1]);
            }
        } else {
            Optional<?> optional = (Optional<?>) value;
            out.writeBoolean(optional.isPresent());
            if (optional.isPresent()) {
                write(out, optional.get(), boxed(of[0]));
            }
        }
    }

    static Object read(DataInputStream in, Type type) throws IOException {
        if (type instanceof ParameterizedType generic) {
            return readMany(in, generic);
        } else if (type == String.class) {
            return text(in);
        } else if (type == long.class) {
            return in.readLong();
        } else if (type == int.class) {
            return in.readInt();
        } else if (type == double.class) {
            return in.readDouble();
        } else if (type == boolean.class) {
            return in.readBoolean();
        } else if (type == Exhibit.class) {
            return ExhibitFormat.exhibit(in.readNBytes(count(in)));
        }
        Class<?> kind = (Class<?>) type;
        if (kind.isEnum()) {
            return kind.getEnumConstants()[in.readUnsignedByte()];
        }
        if (kind.isSealed()) {
            List<Class<?>> kinds = kinds(kind);
            int which = in.readUnsignedByte();
            if (which >= kinds.size()) {
                throw new IOException("kind " + which + " of " + kind.getSimpleName() + " is unknown; the two sides differ in version");
            }
            kind = kinds.get(which);
        }
        Shape shape = shape(kind);
        Object[] parts = new Object[shape.types.length];
        for (int i = 0; i < parts.length; i++) {
            parts[i] = read(in, shape.types[i]);
        }
        return make(shape.maker, parts);
    }

    private static Object readMany(DataInputStream in, ParameterizedType type) throws IOException {
        Type[] of = type.getActualTypeArguments();
        if (type.getRawType() == List.class) {
            int size = count(in);
            List<Object> list = new ArrayList<>(size);
            for (int i = 0; i < size; i++) {
                list.add(read(in, boxed(of[0])));
            }
            return list;
        }
        if (type.getRawType() == Map.class) {
            int size = count(in);
            Map<Object, Object> map = new LinkedHashMap<>();
            for (int i = 0; i < size; i++) {
                map.put(read(in, of[0]), read(in, of[1]));
            }
            return map;
        }
        return in.readBoolean() ? Optional.of(read(in, boxed(of[0]))) : Optional.empty();
    }

    private static int count(DataInputStream in) throws IOException {
        int size = in.readInt();
        // Each element takes a byte or more, unless it is a record of nothing, which no list of ours holds.
        if (size < 0 || size > in.available()) {
            throw new EOFException("a list of " + size + " things in " + in.available() + " bytes");
        }
        return size;
    }

    private static Type boxed(Type type) {
        return type == Integer.class ? int.class : type == Long.class ? long.class : type == Double.class ? double.class
                : type == Boolean.class ? boolean.class : type;
    }

    private static void text(DataOutputStream out, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(in.readNBytes(count(in)), StandardCharsets.UTF_8);
    }

    /** The records of a sealed family, those of families within it included, in the order of their declaration. */
    private static List<Class<?>> kinds(Class<?> family) {
        List<Class<?>> known = KINDS.get(family);
        if (known == null) {
            known = new ArrayList<>();
            for (Class<?> kind : family.getPermittedSubclasses()) {
                if (kind.isSealed()) {
                    known.addAll(kinds(kind));
                } else {
                    known.add(kind);
                }
            }
            KINDS.put(family, known);
        }
        return known;
    }

    private static Shape shape(Class<?> kind) throws IOException {
        Shape known = SHAPES.get(kind);
        if (known != null) {
            return known;
        }
        RecordComponent[] components = kind.getRecordComponents();
        if (components == null) {
            throw new IOException(kind.getName() + " is not a record");
        }
        Method[] getters = new Method[components.length];
        Type[] types = new Type[components.length];
        Class<?>[] raw = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            getters[i] = components[i].getAccessor();
            getters[i].setAccessible(true);
            types[i] = components[i].getGenericType();
            raw[i] = components[i].getType();
        }
        try {
            Constructor<?> maker = kind.getDeclaredConstructor(raw);
            maker.setAccessible(true);
            Shape shape = new Shape(maker, getters, types);
            SHAPES.put(kind, shape);
            return shape;
        } catch (NoSuchMethodException e) {
            throw new IOException(e);
        }
    }

    private static Object get(Method getter, Object record) throws IOException {
        try {
            return getter.invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IOException(e);
        }
    }

    private static Object make(Constructor<?> maker, Object[] parts) throws IOException {
        try {
            return maker.newInstance(parts);
        } catch (ReflectiveOperationException | IllegalArgumentException e) {
            throw new IOException("a " + maker.getDeclaringClass().getSimpleName() + " that can't be: " + e.getCause(), e);
        }
    }
}
