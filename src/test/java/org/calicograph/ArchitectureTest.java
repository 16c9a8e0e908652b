package org.calicograph;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds the code to {@code docs/architecture.md}. */
class ArchitectureTest {

    private static final String ROOT = "org.calicograph.";
    private static final Path SOURCES = Path.of("src/main/java/org/calicograph");
    private static final int LONGEST_FILE = 400;
    private static final int MOST_FILES = 26;

    /** A word of a name in camel case: the next letter, if any, begins another word. */
    private static final Pattern VAGUE_WORD =
            Pattern.compile("(Util|Utils|Utility|Utilities|Helper|Helpers|Manager|Impl|Common)(?![a-z])");

    private static House house;
    private static JavaClasses classes;

    @BeforeAll
    static void read() throws IOException {
        house = House.readFrom(Path.of("docs/architecture.md"));
        classes = new ClassFileImporter().importPath("target/classes/org/calicograph");
        assertThat(classes).as("compiled classes").isNotEmpty();
    }

    @Test
    void every_package_is_in_the_table() {
        Set<String> found = new TreeSet<>();
        for (JavaClass each : classes) {
            found.add(rowOf(each));
        }
        assertThat(house.packages()).containsAll(found);
    }

    @Test
    void a_row_names_only_rows_above_it() {
        List<String> order = List.copyOf(house.packages());
        house.mayUse().forEach((name, used) ->
                assertThat(order.subList(0, order.indexOf(name))).as("above " + name).containsAll(used));
    }

    @Test
    void a_package_uses_only_what_its_row_allows() {
        List<String> breaches = new ArrayList<>();
        for (Dependency each : dependencies()) {
            JavaClass used = each.getTargetClass().getBaseComponentType();
            if (used.getName().startsWith(ROOT)
                    && !house.allows(rowOf(each.getOriginClass()), rowOf(used))) {
                breaches.add(each.getDescription());
            }
        }
        assertThat(breaches).isEmpty();
    }

    @Test
    void a_library_is_used_only_in_its_place() {
        List<String> breaches = new ArrayList<>();
        for (Dependency each : dependencies()) {
            String used = each.getTargetClass().getBaseComponentType().getName();
            for (Map.Entry<String, List<String>> library : house.onlyIn().entrySet()) {
                if (used.startsWith(library.getKey() + ".")
                        && library.getValue().stream().noneMatch(place -> isIn(place, each.getOriginClass()))) {
                    breaches.add(each.getDescription());
                }
            }
        }
        assertThat(breaches).isEmpty();
    }

    @Test
    void the_place_of_a_library_is_in_the_table() {
        for (List<String> places : house.onlyIn().values()) {
            for (String place : places) {
                assertThat(house.packages()).contains(place.split("\\.")[0]);
            }
        }
    }

    @Test
    void every_package_says_what_it_promises() throws IOException {
        List<Path> silent = new ArrayList<>();
        for (Path folder : below(SOURCES, Files::isDirectory)) {
            try (Stream<Path> files = Files.list(folder)) {
                boolean holdsCode = files.anyMatch(file -> file.toString().endsWith(".java"));
                if (holdsCode && !Files.exists(folder.resolve("package-info.java"))) {
                    silent.add(folder);
                }
            }
        }
        assertThat(silent).as("folders without package-info.java").isEmpty();
    }

    @Test
    void no_room_has_outgrown_a_reader() throws IOException {
        List<String> full = new ArrayList<>();
        for (Path folder : below(SOURCES, Files::isDirectory)) {
            try (Stream<Path> files = Files.list(folder)) {
                long count = files.filter(file -> file.toString().endsWith(".java")).count();
                if (count > MOST_FILES) {
                    full.add(folder + " holds " + count + " files");
                }
            }
        }
        assertThat(full).isEmpty();
    }

    @Test
    void no_class_has_a_vague_name() {
        List<String> vague = new ArrayList<>();
        for (JavaClass each : classes) {
            String name = each.getSimpleName().replace("CommonMark", "");
            if (VAGUE_WORD.matcher(name).find()) {
                vague.add(each.getName());
            }
        }
        assertThat(vague).isEmpty();
    }

    @Test
    void no_source_file_is_longer_than_400_lines() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (String root : List.of("src/main/java", "src/test/java", "src/bench/java", "stdlib")) {
            for (Path file : below(Path.of(root), path -> path.toString().endsWith(".java"))) {
                int lines = Files.readAllLines(file).size();
                if (lines > LONGEST_FILE) {
                    tooLong.add(file + " has " + lines + " lines");
                }
            }
        }
        assertThat(tooLong).isEmpty();
    }

    private static List<Dependency> dependencies() {
        return classes.stream().flatMap(each -> each.getDirectDependenciesFromSelf().stream()).toList();
    }

    /** The row that a class stands in: its package's own, since every package has one. */
    private static String rowOf(JavaClass each) {
        String packageName = each.getPackageName();
        return packageName.startsWith(ROOT) ? packageName.substring(ROOT.length()) : packageName;
    }

    /** Whether a class stands in a package, or its name begins as the place does. */
    private static boolean isIn(String place, JavaClass each) {
        return place.contains(".")
                ? each.getName().startsWith(ROOT + place)
                : rowOf(each).equals(place) || rowOf(each).startsWith(place + ".");
    }

    private static List<Path> below(Path root, Predicate<Path> wanted) throws IOException {
        if (!Files.exists(root)) {
            return List.of();
        }
        try (Stream<Path> found = Files.walk(root)) {
            return found.filter(wanted).sorted().toList();
        }
    }
}
