package org.calicograph.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ImportsTest {

    private static final List<String> JAVA = List.of("java.lang", "java.util", "java.util.function", "java.util.stream");

    /** Two packages that both have a name make it ambiguous, unless one of the two is imported by name. */
    @Test
    void every_name_that_two_imported_packages_have_is_imported_by_itself() throws Exception {
        String imports = Imports.text(true);
        Map<String, List<String>> owners = new TreeMap<>();
        Matcher packages = Pattern.compile("import (org\\.calicograph\\.[a-z]+)\\.\\*;").matcher(imports);
        while (packages.find()) {
            for (String name : packages.group(1).endsWith("stdlib") ? stdlib() : classes(packages.group(1))) {
                owners.computeIfAbsent(name, n -> new ArrayList<>()).add(packages.group(1));
            }
        }
        assertThat(owners).containsKeys("Length", "Picture", "Star");
        for (String name : owners.keySet()) {
            for (String known : JAVA) {
                try {
                    if (java.lang.reflect.Modifier.isPublic(Class.forName(known + "." + name).getModifiers())) {
                        owners.get(name).add(known);
                    }
                } catch (ClassNotFoundException none) {
                    // No clash.
                }
            }
        }
        List<String> unclear = new ArrayList<>();
        owners.forEach((name, all) -> {
            if (all.size() > 1 && !Pattern.compile("import [\\w.]+\\." + name + ";").matcher(imports).find()) {
                unclear.add(name + " of " + all);
            }
        });
        assertThat(unclear).isEmpty();
    }

    private static List<String> classes(String name) throws Exception {
        URI place = Imports.class.getProtectionDomain().getCodeSource().getLocation().toURI().resolve(name.replace('.', '/') + "/");
        List<String> found = new ArrayList<>();
        for (String each : names(Path.of(place), ".class")) {
            if (!each.contains("$") && java.lang.reflect.Modifier.isPublic(Class.forName(name + "." + each, false, Imports.class.getClassLoader()).getModifiers())) {
                found.add(each);
            }
        }
        return found;
    }

    private static List<String> stdlib() throws IOException {
        return names(Path.of("stdlib"), ".java");
    }

    private static List<String> names(Path folder, String ending) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(ending) && !f.startsWith("package-info"))
                    .map(f -> f.substring(0, f.length() - ending.length())).toList();
        }
    }
}
