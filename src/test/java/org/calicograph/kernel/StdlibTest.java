package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StdlibTest {

    @TempDir
    Path place;

    private Path write(String name, String text) throws IOException {
        Path file = place.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private Stdlib stdlib(String... folders) throws IOException {
        return Stdlib.of(java.util.Arrays.stream(folders).map(place::resolve).toList(), place.resolve("cache"));
    }

    private static Object call(Stdlib stdlib, String type) throws Exception {
        return new InProcess.Classes(stdlib.classes()).loadClass(Stdlib.PACKAGE + "." + type).getMethod("value").invoke(null);
    }

    @Test
    void classes_are_compiled_with_and_without_a_package_line() throws Exception {
        write("stdlib/Knot.java", "public class Knot { public static int value() { return 1 + Bend.value(); } }");
        write("stdlib/Bend.java", "// a note\npackage org.calicograph.stdlib;\npublic class Bend { public static int value() { return 2; } }");
        assertThat(call(stdlib("stdlib"), "Knot")).isEqualTo(3);
    }

    @Test
    void a_file_that_does_not_compile_is_named_with_its_place_and_the_others_work() throws Exception {
        write("stdlib/Good.java", "public class Good { public static int value() { return 4; } }");
        Path bad = write("stdlib/Bad.java", "public class Bad {\n  public static int value() { return nothing; }\n}");
        Path needs = write("stdlib/NeedsBad.java", "public class NeedsBad { public static int value() { return Bad.value(); } }");
        Stdlib stdlib = stdlib("stdlib");
        assertThat(call(stdlib, "Good")).isEqualTo(4);
        assertThat(stdlib.broken()).extracting(Catalogue.Broken::file).containsExactly(bad.toString(), needs.toString());
        assertThat(stdlib.broken().get(0).problem().from()).isEqualTo(new Place(2, 38));
        assertThat(stdlib.broken().get(0).problem().message()).contains("nothing");
        // The second time the result comes from the folder kept.
        assertThat(stdlib("stdlib").broken()).isEqualTo(stdlib.broken());
    }

    @Test
    void a_place_on_the_first_line_does_not_count_the_package_line_put_there() throws Exception {
        write("stdlib/Bad.java", "public class Bad { int a = nothing; }");
        assertThat(stdlib("stdlib").broken().get(0).problem().from()).isEqualTo(new Place(1, 28));
    }

    @Test
    void classes_are_compiled_once_and_again_after_a_change() throws Exception {
        write("stdlib/Knot.java", "public class Knot { public static int value() { return 1; } }");
        Path first = stdlib("stdlib").classes().orElseThrow();
        assertThat(stdlib("stdlib").classes()).contains(first);
        write("stdlib/Knot.java", "public class Knot { public static int value() { return 2; } }");
        Stdlib changed = stdlib("stdlib");
        assertThat(changed.classes().orElseThrow()).isNotEqualTo(first);
        assertThat(call(changed, "Knot")).isEqualTo(2);
    }

    @Test
    void the_users_own_file_is_laid_over_the_products() throws Exception {
        write("stdlib/Knot.java", "public class Knot { public static int value() { return 1; } }");
        write("own/Knot.java", "public class Knot { public static int value() { return 10; } }");
        write("own/More.java", "public class More { public static int value() { return Knot.value() + 1; } }");
        assertThat(call(stdlib("stdlib", "own"), "More")).isEqualTo(11);
    }

    @Test
    void no_folder_is_no_stdlib() throws Exception {
        assertThat(stdlib("nowhere").isEmpty()).isTrue();
    }

    @Test
    void the_catalogue_lists_public_classes_methods_and_first_sentences() throws Exception {
        Path file = write("stdlib/Waves.java", """
                package org.calicograph.stdlib;

                /** Rows of {@code small} triangles. More than one sentence. */
                public final class Waves {

                    /** A block of them. Turned twice. */
                    public static int block(int size, String name) { return size; }

                    private int hidden() { return 1; }
                }
                """);
        Catalogue catalogue = new Shelf(stdlib("stdlib")).catalogue();
        assertThat(catalogue.entries()).containsExactly(new Catalogue.Entry("Waves", "Rows of small triangles.", file.toString(),
                List.of(new Catalogue.Routine("static int block(int size, String name)", "A block of them.", 7))));
    }

    @Test
    void what_editors_and_systems_leave_behind_is_passed_over() throws Exception {
        write("own/Knot.java", "public class Knot { public static int value() { return 1; } }");
        write("own/._Knot.java", "\0\5\26\7");
        write("own/.#Bend.java", "somebody@here.77");
        Files.createDirectories(place.resolve("own/Old.java"));
        Files.createSymbolicLink(place.resolve("own/.#Knot.java"), Path.of("nobody@nowhere.1"));
        Stdlib stdlib = stdlib("own");
        assertThat(stdlib.broken()).isEmpty();
        assertThat(call(stdlib, "Knot")).isEqualTo(1);
    }

    @Test
    void a_file_that_cannot_be_a_routine_is_named_with_its_repair_and_the_others_work() throws Exception {
        write("own/Knot.java", "\uFEFFpublic class Knot { public static int value() { return 7; } }");
        Path latin = place.resolve("own/Latin.java");
        Files.write(latin, "// f\u00fcnf\npublic class Latin { }".getBytes(java.nio.charset.StandardCharsets.ISO_8859_1));
        write("own/Bend.java", "public class Hitch { }");
        write("own/Ring.java", "package rings;\npublic class Ring { }");
        Path locked = write("own/Locked.java", "public class Locked { }");
        Files.setPosixFilePermissions(locked, java.util.Set.of());
        Stdlib stdlib = stdlib("own");
        assertThat(call(stdlib, "Knot")).isEqualTo(7);
        java.util.Map<String, String> said = new java.util.TreeMap<>();
        stdlib.broken().forEach(b -> said.put(Path.of(b.file()).getFileName().toString(), b.problem().message()));
        assertThat(said.get("Latin.java")).contains("save it as UTF-8");
        assertThat(said.get("Bend.java")).contains("there is no class 'Bend' in it; name the class and the file alike");
        assertThat(said.get("Ring.java")).contains("'package rings;'").contains("take the line out");
        if (!Files.isReadable(locked)) {
            assertThat(said.get("Locked.java")).contains("check its permissions");
        }
        assertThat(new Plainly(stdlib).words("cannot find symbol\n  symbol:   variable Ring\n  location: class ", java.util.Set.of()))
                .startsWith("Ring can't be used: in Ring.java, line 1,").contains("take the line out");
    }

    @Test
    void a_cache_left_empty_by_a_power_cut_is_made_anew_and_one_that_cannot_be_written_is_done_without() throws Exception {
        write("own/Knot.java", "public class Knot { public static int value() { return 7; } }");
        Path kept = stdlib("own").classes().orElseThrow();
        try (var all = Files.walk(kept)) {
            for (Path each : all.filter(f -> f.toString().endsWith(".class")).toList()) {
                Files.write(each, new byte[0]);
            }
        }
        assertThat(call(stdlib("own"), "Knot")).isEqualTo(7);
        // A file in the place of the cache's folder: nobody, whatever he may do, can write below it.
        Path blocked = write("blocked", "no folder");
        assertThat(call(Stdlib.of(java.util.List.of(place.resolve("own")), blocked), "Knot")).isEqualTo(7);
    }
}
