package org.calicograph;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import org.junit.jupiter.api.Test;

/** What the build writes of the libraries beside us. The build itself fails on a jar that states no licence. */
class NoticesTest {

    @Test
    void every_jar_that_our_classes_use_is_named_with_its_licence() throws IOException {
        Map<String, String> notices = notices();
        assertThat(notices).isNotEmpty();
        assertThat(notices.values()).allSatisfy(licence -> assertThat(licence).isNotBlank());
        Map<String, String> jarOf = packages();
        Set<String> used = new TreeSet<>();
        for (JavaClass each : new ClassFileImporter().importPath("target/classes/org/calicograph")) {
            each.getDirectDependenciesFromSelf().forEach(d -> {
                String jar = jarOf.get(d.getTargetClass().getBaseComponentType().getPackageName());
                if (jar != null) {
                    used.add(jar.replaceFirst("-(linux|mac|win)[a-z0-9-]*\\.jar$", ".jar"));
                }
            });
        }
        assertThat(used).as("jars on the class path whose packages we use").hasSizeGreaterThan(8);
        assertThat(notices.keySet()).containsAll(used);
    }

    @Test
    void nothing_is_named_that_is_not_there() throws IOException {
        List<String> there = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            there.add(Path.of(entry).getFileName().toString());
        }
        assertThat(there).containsAll(notices().keySet());
    }

    @Test
    void the_project_has_a_licence_of_its_own() throws IOException {
        assertThat(Files.readString(Path.of("LICENSE"))).contains("Apache License", "Version 2.0", "the authors of Calicograph");
    }

    /** Licences by the jar's file name. */
    private static Map<String, String> notices() throws IOException {
        Map<String, String> all = new LinkedHashMap<>();
        for (String line : Files.readAllLines(Path.of("target/notices/NOTICES"))) {
            if (line.contains(".jar: ")) {
                all.put(line.substring(0, line.indexOf(": ")), line.substring(line.indexOf("; ") + 2).strip());
            }
        }
        return all;
    }

    /** The jar in which each package outside the JDK stands. */
    private static Map<String, String> packages() throws IOException {
        Map<String, String> jarOf = new LinkedHashMap<>();
        for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
            if (entry.endsWith(".jar")) {
                try (JarFile jar = new JarFile(entry)) {
                    jar.stream().filter(e -> e.getName().endsWith(".class") && e.getName().contains("/") && !e.getName().startsWith("META-INF"))
                            .forEach(e -> jarOf.put(e.getName().substring(0, e.getName().lastIndexOf('/')).replace('/', '.'), Path.of(entry).getFileName().toString()));
                }
            }
        }
        return jarOf;
    }
}
