package org.calicograph.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NotebookFileTest {

    private static final Notebook TIDE = Notebook.titled("Tide Table", Cell.code("a1", "1 + 1"));

    @TempDir
    Path folder;

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Test
    void what_was_saved_is_read() throws IOException {
        Path file = folder.resolve("tide.json");
        NotebookFile.save(TIDE, file);
        assertThat(NotebookFile.read(file)).isEqualTo(TIDE);
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void permissions_and_links_stay() throws IOException {
        Path file = folder.resolve("tide.json");
        NotebookFile.save(TIDE, file);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r----x"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("tide.json"));
        NotebookFile.save(TIDE.withTitle("Neap"), link);
        assertThat(link).isSymbolicLink();
        assertThat(NotebookFile.read(file).title()).isEqualTo("Neap");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-r----x");
    }

    @Test
    void a_new_file_is_as_open_as_any_other() throws IOException {
        Path other = Files.createFile(folder.resolve("other"));
        Path file = folder.resolve("tide.json");
        NotebookFile.save(TIDE, file);
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
    }

    @Test
    void a_link_to_nowhere_gets_its_file() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("new.json"));
        NotebookFile.save(TIDE, link);
        assertThat(link).isSymbolicLink();
        assertThat(NotebookFile.read(folder.resolve("new.json"))).isEqualTo(TIDE);
    }

    @Test
    void what_a_dead_process_left_behind_is_cleared() throws IOException {
        Path left = Files.createFile(folder.resolve(".tide.json.999999999-1.part"));
        Path ours = Files.createFile(folder.resolve(".tide.json." + ProcessHandle.current().pid() + "-999.part"));
        NotebookFile.save(TIDE, folder.resolve("tide.json"));
        assertThat(left).doesNotExist();
        assertThat(ours).exists();
    }

    @Test
    void what_can_not_be_read_or_saved_says_why_and_stays() throws IOException {
        assertThatThrownBy(() -> NotebookFile.read(folder.resolve("none.json"))).isInstanceOf(NotebookException.class)
                .hasMessageEndingWith("none.json: there is no such file; check the name");
        assertThatThrownBy(() -> NotebookFile.read(folder)).hasMessageEndingWith("this is a folder; name a notebook in it");
        assertThatThrownBy(() -> NotebookFile.save(TIDE, folder)).hasMessageEndingWith("this is a folder; give the notebook a name in it");
        assertThatThrownBy(() -> NotebookFile.save(TIDE, folder.resolve("no/tide.json"))).isInstanceOf(NotebookException.class)
                .hasMessageEndingWith("there is no such folder; make it first");
        Path loop = Files.createSymbolicLink(folder.resolve("loop.json"), Path.of("loop.json"));
        assertThatThrownBy(() -> NotebookFile.save(TIDE, loop)).isInstanceOf(NotebookException.class)
                .hasMessageContaining("too many symbolic links");
    }

    @Test
    void a_file_past_the_limit_is_refused_unread() throws IOException {
        Path file = folder.resolve("huge.json");
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(40L << 30);
        }
        assertThatThrownBy(() -> NotebookFile.read(file)).isInstanceOf(NotebookException.class)
                .hasMessageContaining("the file has 42949672960 bytes, and a notebook can have 67108864 at most");
    }

    @Test
    void a_saver_killed_at_any_moment_leaves_a_whole_notebook() throws Exception {
        Path file = folder.resolve("tide.json");
        NotebookFile.save(Saver.notebook(0), file);
        Random random = new Random(1851);
        for (int i = 0; i < 12; i++) {
            Process saver = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx128m", "-XX:+UseSerialGC",
                    "-XX:TieredStopAtLevel=1", "-cp", System.getProperty("java.class.path"), Saver.class.getName(), file.toString())
                    .redirectErrorStream(true).start();
            try (InputStream out = saver.getInputStream()) {
                assertThat(out.read()).as("the saver is at work").isEqualTo('s');
                Thread.sleep(random.nextInt(40));
                saver.destroyForcibly().waitFor();
            }
            assertThat(saver.exitValue()).as("killed, not ended").isNotZero();
            Notebook found = NotebookFile.read(file);
            assertThat(found).isEqualTo(Saver.notebook(Integer.parseInt(found.title())));
        }
        NotebookFile.save(TIDE, file);
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).containsExactly(file);
        }
    }

    /** Saves one big notebook after another until it is killed. */
    static final class Saver {

        static Notebook notebook(int number) {
            return Notebook.titled("" + number, Cell.code("a1", ("// " + number + "\n").repeat(60_000)));
        }

        public static void main(String[] arguments) throws IOException {
            for (int i = 1;; i++) {
                NotebookFile.save(notebook(i % 50), Path.of(arguments[0]));
                if (i == 1) {
                    System.out.print('s');
                    System.out.flush();
                }
            }
        }
    }
}
