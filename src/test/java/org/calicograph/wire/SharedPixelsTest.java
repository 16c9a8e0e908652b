package org.calicograph.wire;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SlateTest {

    private static final List<PixelFrame> EASELS = List.of(easel(0, 300, 200), easel(1, 7, 5));

    @TempDir
    Path folder;

    private static PixelFrame easel(int part, int width, int height) {
        return new PixelFrame("a1", part, width, height, 1, Optional.empty(), Colour.WHITE, Colour.WHITE);
    }

    @Test
    void what_the_kernel_writes_the_editor_reads() throws Exception {
        SharedPixels editors = SharedPixels.in(folder, EASELS);
        SharedPixels kernels = SharedPixels.at(editors.path());
        int[] pixels = new int[35];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = 0xff000000 | i;
        }
        kernels.write(SharedPixels.at(EASELS, 1), pixels);
        assertArrayEquals(pixels, editors.read(new Painted(1, 60_000, 7, 5, new Box(0, 0, 1, 1))));
    }

    @Test
    void no_room_is_taken_without_being_filled() throws Exception {
        SharedPixels slate = SharedPixels.in(folder, EASELS);
        assertEquals(4 * 60_035, Files.size(slate.path()));
        assertTrue(slate.holds(EASELS));
        assertFalse(slate.holds(List.of(easel(0, 300, 201), easel(1, 7, 5))));
    }

    @Test
    void what_a_killed_editor_left_goes_and_what_a_living_one_made_stays() throws Exception {
        Process gone = new ProcessBuilder(ProcessHandle.current().info().command().orElseThrow(), "-version").start();
        gone.waitFor();
        Path left = Files.createFile(folder.resolve("calicograph-" + gone.pid() + "-1.slate"));
        Path other = Files.createFile(folder.resolve("calicograph-notes.slate"));
        SharedPixels first = SharedPixels.in(folder, EASELS);
        SharedPixels.in(folder, EASELS);
        assertFalse(Files.exists(left));
        assertTrue(Files.exists(other));
        assertTrue(Files.exists(first.path()));
    }
}
