package org.calicograph;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.calicograph.wire.VisiblePackages;
import org.junit.jupiter.api.Test;

/** What cells see is chosen: the list in docs/cells.md is the list in force. */
class ChosenTypesTest {

    @Test
    void the_page_lists_just_the_types_that_cells_see_room_by_room() throws IOException, ReflectiveOperationException {
        Map<String, List<String>> written = new TreeMap<>();
        Matcher row = Pattern.compile("(?m)^\\| (\\S+) \\| (.+) \\|$").matcher(Files.readString(Path.of("docs/cells.md")));
        while (row.find()) {
            if (VisiblePackages.HOUSE.contains(row.group(1))) {
                written.put(row.group(1), List.of(row.group(2).split(" ")));
            }
        }
        Map<String, List<String>> seen = new TreeMap<>();
        types().forEach((room, types) -> seen.put(room, types.stream().map(Class::getSimpleName).filter(n -> !VisiblePackages.MACHINERY.contains(n)).toList()));
        assertThat(written).isEqualTo(seen);
    }

    @Test
    void no_chosen_type_gives_or_takes_machinery() throws IOException, ReflectiveOperationException {
        List<String> found = new ArrayList<>();
        List<String> machinery = new ArrayList<>();
        for (List<Class<?>> room : types().values()) {
            for (Class<?> type : room) {
                if (VisiblePackages.MACHINERY.contains(type.getSimpleName())) {
                    machinery.add(type.getSimpleName());
                    continue;
                }
                for (Method method : type.getDeclaredMethods()) {
                    if (Modifier.isPublic(method.getModifiers()) && !method.isBridge()) {
                        Stream.concat(Stream.of(method.getGenericReturnType()), Arrays.stream(method.getGenericParameterTypes())).flatMap(ChosenTypesTest::named)
                                .filter(c -> c.getName().startsWith("org.calicograph.") && VisiblePackages.MACHINERY.contains(c.getSimpleName()))
                                .forEach(c -> found.add(type.getSimpleName() + "." + method.getName() + " speaks of " + c.getSimpleName()));
                    }
                }
            }
        }
        assertThat(found).isEmpty();
        assertThat(new TreeSet<>(machinery)).as("every name in the list is that of a type").isEqualTo(new TreeSet<>(VisiblePackages.MACHINERY));
    }

    private static Stream<Class<?>> named(Type type) {
        if (type instanceof ParameterizedType p) {
            return Stream.concat(named(p.getRawType()), Arrays.stream(p.getActualTypeArguments()).flatMap(ChosenTypesTest::named));
        }
        return type instanceof Class<?> c ? Stream.of(c.isArray() ? c.getComponentType() : c) : Stream.empty();
    }

    private static Map<String, List<Class<?>>> types() throws IOException, ReflectiveOperationException {
        Map<String, List<Class<?>>> all = new TreeMap<>();
        for (String room : VisiblePackages.HOUSE) {
            List<Class<?>> types = new ArrayList<>();
            try (Stream<Path> files = Files.list(Path.of("src/main/java/org/calicograph", room.replace('.', '/')))) {
                for (Path file : files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("package-info.java")).sorted().toList()) {
                    Class<?> type = Class.forName("org.calicograph." + room + "." + file.getFileName().toString().replace(".java", ""));
                    if (Modifier.isPublic(type.getModifiers())) {
                        types.add(type);
                    }
                }
            }
            all.put(room, types);
        }
        return all;
    }
}
