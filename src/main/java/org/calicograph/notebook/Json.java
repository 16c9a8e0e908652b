package org.calicograph.notebook;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** A JSON value (RFC 8259) that keeps numbers digit by digit and fields in their order. */
public sealed interface Json {

    /** @param fields in the order of the file; no name twice */
    record Obj(Map<String, Json> fields) implements Json {
        public static final Obj EMPTY = new Obj(Map.of());

        public Obj {
            fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
        }

        public Optional<Json> get(String name) {
            return Optional.ofNullable(fields.get(name));
        }

        /** The same fields in the same order; order counts, since a file is to be kept as it was. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Obj o && List.copyOf(fields.entrySet()).equals(List.copyOf(o.fields.entrySet()));
        }

        @Override
        public int hashCode() {
            return fields.hashCode();
        }
    }

    record Arr(List<Json> items) implements Json {
        public Arr {
            items = List.copyOf(items);
        }
    }

    record Str(String text) implements Json { }

    /** @param digits as written, such as {@code 1.50} or {@code -2e400} */
    record Num(String digits) implements Json {
        private static final Pattern FORM = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");

        public Num {
            if (!isNumber(digits)) {
                throw new IllegalArgumentException("'" + Excerpt.of(digits) + "' is not a number in JSON; write it like 12 or 0.75");
            }
        }

        static boolean isNumber(String text) {
            return FORM.matcher(text).matches();
        }
    }

    record Bool(boolean value) implements Json { }

    record Null() implements Json { }

    static Json of(String text) {
        return new Str(text);
    }

    static Json of(long number) {
        return new Num(Long.toString(number));
    }

    /** As text: two spaces of indent, fields in their order, a line feed at the end. */
    default String printed() {
        return JsonPrinter.print(this);
    }

    /** What the value is, in words: {@code a number}, {@code a list}. */
    default String kind() {
        if (this instanceof Obj) {
            return "an object";
        } else if (this instanceof Arr) {
            return "a list";
        } else if (this instanceof Str) {
            return "a text";
        } else if (this instanceof Num) {
            return "a number";
        } else {
            return this instanceof Bool b ? Boolean.toString(b.value()) : "null";
        }
    }
}
