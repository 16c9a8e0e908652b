package org.calicograph.desk.opened;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpenFilesTest {

    @TempDir
    Path folder;

    private final Notebook ropewalk = Notebook.titled("Ropewalk", Cell.code("a1", "6 * 7"));

    @Test
    void a_file_that_somebody_else_writes_is_noticed_once() throws Exception {
        OpenFile file = OpenFile.at(folder.resolve("ropewalk.json"));
        file.save(ropewalk);
        assertThat(file.isChangedElsewhere()).isFalse();
        OpenFile.at(file.path()).save(ropewalk.withTitle("Rope"));
        assertThat(file.isChangedElsewhere()).isTrue();
        file.overlook();
        assertThat(file.isChangedElsewhere()).isFalse();
        assertThat(file.read().title()).isEqualTo("Rope");
        assertThat(file.name()).isEqualTo("ropewalk");
    }

    @Test
    void work_left_by_a_window_that_is_gone_is_found_and_that_of_a_living_one_is_not() throws Exception {
        Recovery here = Recovery.beside(folder.resolve("ropewalk.json"));
        here.keep(ropewalk);
        assertThat(here.find()).isEmpty();
        here.clear();
        assertThat(folder).isEmptyDirectory();

        Process gone = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version").start();
        gone.waitFor();
        here.of(new Window(gone.pid(), 1)).keep(ropewalk);
        Recovery.Left left = here.find().orElseThrow();
        assertThat(left.read()).isEqualTo(ropewalk);
        left.discard();
        assertThat(here.find()).isEmpty();
    }

    @Test
    void what_is_saved_already_is_not_offered_again_and_what_is_taken_up_is_there_once() throws Exception {
        Path file = folder.resolve("ropewalk.json");
        OpenFile.at(file).save(ropewalk);
        Process gone = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-version").start();
        gone.waitFor();
        Recovery here = Recovery.beside(file);
        Recovery theirs = here.of(new Window(gone.pid(), 1));
        theirs.aboutToSave(ropewalk);
        assertThat(here.find()).isEmpty();
        theirs.keep(ropewalk.withTitle("Rope"));
        theirs.aboutToSave(ropewalk);
        assertThat(here.find()).isEmpty();
        theirs.keep(ropewalk.withTitle("Rope"));
        here.takeOver(here.find().orElseThrow());
        assertThat(here.find()).isEmpty();
        try (var all = Files.list(folder)) {
            assertThat(all).hasSize(2);
        }
        here.clear();
        assertThat(folder.toFile().list()).containsExactly("ropewalk.json");
    }

    @Test
    void work_is_found_although_another_process_has_the_number_now() throws Exception {
        Recovery here = Recovery.beside(folder.resolve("ropewalk.json"));
        Window now = Window.here();
        org.junit.jupiter.api.Assumptions.assumeTrue(now.began() > 0, "this system doesn't tell when a process began");
        here.of(new Window(now.pid(), now.began() - 60_000)).keep(ropewalk);
        assertThat(here.find().orElseThrow().read()).isEqualTo(ropewalk);
    }

    @Test
    void whoever_may_not_read_a_file_may_not_read_what_is_kept_of_it_and_a_folder_moved_away_is_not_made_anew() throws Exception {
        Path file = folder.resolve("diary/ropewalk.json");
        Files.createDirectories(file.getParent());
        OpenFile.at(file).save(ropewalk);
        Files.setPosixFilePermissions(file, java.nio.file.attribute.PosixFilePermissions.fromString("rw-------"));
        Recovery.beside(file).keep(ropewalk);
        try (var all = Files.list(file.getParent())) {
            for (Path each : all.toList()) {
                assertThat(java.nio.file.attribute.PosixFilePermissions.toString(Files.getPosixFilePermissions(each))).as(each.toString()).isEqualTo("rw-------");
            }
        }
        OpenFile open = OpenFile.at(file);
        assertThat(open.isGone()).isFalse();
        Files.move(file.getParent(), folder.resolve("elsewhere"));
        assertThat(open.isGone()).isTrue();
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> Recovery.beside(file).keep(ropewalk)).isInstanceOf(org.calicograph.notebook.NotebookException.class);
        assertThat(file.getParent()).doesNotExist();
    }

    @Test
    void a_notebook_open_in_a_living_window_is_known_to_the_next_and_in_a_dead_one_not() throws Exception {
        Path file = folder.resolve("ropewalk.json");
        Path own = folder.resolve("own");
        Process other = new ProcessBuilder("sleep", "60").start();
        try {
            Window theirs = new Window(other.pid(), other.info().startInstant().map(java.time.Instant::toEpochMilli).orElse(0L));
            Presence there = new Presence(own, theirs);
            there.open(file);
            Presence here = new Presence(own);
            assertThat(here.isOpenElsewhere(file)).isTrue();
            assertThat(here.isOpenElsewhere(folder.resolve("other.json"))).isFalse();
            here.open(file);
            here.close();
            assertThat(here.isOpenElsewhere(file)).isTrue();
        } finally {
            other.destroyForcibly().waitFor();
        }
        assertThat(new Presence(own).isOpenElsewhere(file)).isFalse();
    }

    @Test
    void trust_goes_with_the_code_as_it_stands() {
        Trust trust = new Trust(folder.resolve("own"), folder.resolve("product"));
        Path elsewhere = folder.resolve("from-a-friend.json");
        assertThat(trust.holds(ropewalk, elsewhere)).isFalse();
        trust.grant(ropewalk);
        assertThat(trust.holds(ropewalk, elsewhere)).isTrue();
        assertThat(trust.holds(ropewalk.withTitle("Another title"), elsewhere)).isTrue();
        assertThat(trust.holds(ropewalk.withText("a1", "6 * 8"), elsewhere)).isFalse();
    }

    @Test
    void prose_alone_needs_no_trust() {
        Trust trust = new Trust(folder.resolve("own"), folder.resolve("product"));
        assertThat(trust.holds(Notebook.titled("Words", Cell.prose("a1", "only")), folder.resolve("x.json"))).isTrue();
    }

    @Test
    void every_notebook_of_the_product_is_trusted_in_its_place_as_long_as_its_code_is_what_was_shipped() throws Exception {
        Path product = Path.of("notebooks").toAbsolutePath();
        Trust trust = new Trust(folder.resolve("own"), product);
        try (var files = Files.list(product)) {
            for (Path each : files.filter(f -> f.toString().endsWith(".json")).toList()) {
                Notebook shipped = NotebookFile.read(each);
                assertThat(trust.holds(shipped, each)).as(each.toString()).isTrue();
                String code = shipped.cells().stream().filter(c -> c instanceof Cell.Code).findFirst().orElseThrow().id();
                assertThat(trust.holds(shipped.withText(code, "1 + 1"), each)).as("changed: " + each).isFalse();
                assertThat(trust.holds(shipped, folder.resolve(each.getFileName()))).as("a copy of " + each).isFalse();
            }
        }
        assertThat(trust.holds(ropewalk, product.resolve("ropewalk-by-somebody.json"))).as("added to the folder").isFalse();
    }

    @Test
    void routines_beside_a_notebook_are_trusted_with_it_and_asked_for_again_when_they_change() throws Exception {
        Trust trust = new Trust(folder.resolve("own"), folder.resolve("product"));
        Path opened = folder.resolve("ropewalk.json");
        trust.grant(ropewalk, opened);
        Files.createDirectories(folder.resolve("stdlib"));
        Files.writeString(folder.resolve("stdlib/Star.java"), "class Star { }");
        assertThat(trust.holds(ropewalk, opened)).isFalse();
        trust.grant(ropewalk, opened);
        assertThat(trust.holds(ropewalk, opened)).isTrue();
        Files.writeString(folder.resolve("stdlib/Star.java"), "class Star { int x; }");
        assertThat(trust.holds(ropewalk, opened)).isFalse();
        assertThat(trust.holds(Notebook.titled("Words", Cell.prose("a1", "only")), opened)).isFalse();
    }

    @Test
    void the_latest_study_stands_first_among_the_recent_ones() throws Exception {
        Recents recents = new Recents(folder.resolve("own"));
        Path a = Files.createFile(folder.resolve("a.json"));
        Path b = Files.createFile(folder.resolve("b.json"));
        recents.add(a);
        recents.add(b);
        recents.add(a);
        assertThat(recents.list()).containsExactly(a, b);
        Files.delete(a);
        assertThat(recents.list()).containsExactly(b);
    }
}
