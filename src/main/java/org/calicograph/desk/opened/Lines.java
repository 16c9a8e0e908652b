package org.calicograph.desk.opened;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.calicograph.notebook.WholeFile;

/** A small file of lines; what can't be read counts as empty, what can't be written is let be. */
final class Lines {

    private Lines() { }

    static List<String> read(Path file) {
        try {
            return Files.exists(file) ? Files.readAllLines(file, StandardCharsets.UTF_8) : List.of();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** @return false if it couldn't be written */
    static boolean write(Path file, List<String> lines) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            WholeFile.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
