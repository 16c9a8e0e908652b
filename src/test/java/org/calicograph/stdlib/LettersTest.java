package org.calicograph.stdlib;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.calicograph.Golden;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.setting.Setting;
import org.calicograph.show.PatchworkPicture;
import org.junit.jupiter.api.Test;

class LettersTest {

    private static final Class<?> LETTERS = CompiledStdlib.named("Letters");

    private static Block letter(char c) {
        return (Block) CompiledStdlib.call(LETTERS, "of", c, Length.inches(7));
    }

    @Test
    void every_letter_is_five_by_seven_and_its_dark_is_as_large_as_drawn() {
        String all = (String) CompiledStdlib.call(LETTERS, "all");
        assertEquals(39, all.length());
        for (char c : all.toCharArray()) {
            Block block = letter(c);
            assertEquals(Length.inches(5), block.width());
            assertEquals(Length.inches(7), block.height());
            double dark = block.patches().stream().filter(p -> p.role().equals(Role.DARK)).mapToDouble(p -> p.shape().area().squareInches()).sum();
            assertTrue(c == ' ' ? dark == 0 : dark >= 3 - 1e-9 && dark < 24, c + " has " + dark);
        }
    }

    @Test
    void every_letter_is_sewn_in_straight_seams() {
        for (char c : ((String) CompiledStdlib.call(LETTERS, "all")).toCharArray()) {
            SewingPlan plan = SewingPlan.of((Patchwork) letter(c));
            plan.stages().forEach(s -> assertEquals("", s.warnings(), c + ": " + s.name()));
        }
    }

    @Test
    void a_word_is_its_letters_with_a_square_between() {
        Assembly word = (Assembly) CompiledStdlib.call(LETTERS, "word", "Loft 7", Length.inches(7));
        assertEquals(Length.inches(6 * 5 + 5), word.width());
        assertThrows(RuntimeException.class, () -> letter('@'));
    }

    @Test
    void the_alphabet_looks_as_it_should() {
        String all = (String) CompiledStdlib.call(LETTERS, "all");
        Patchwork sheet = Setting.sashed(13, 3, Length.inches(1), org.calicograph.fabric.Role.BACKGROUND.standIn(), org.calicograph.fabric.Role.BACKGROUND.standIn()).framedToo()
                .of((c, r) -> letter(all.charAt(r * 13 + c)));
        Golden.picture("stdlib/letters", PatchworkPicture.of(sheet).scaled(0.1));
    }

    @Test
    void a_garden_maze_has_pieced_sashes_that_must_fit() {
        Class<?> maze = CompiledStdlib.named("GardenMaze");
        Block sash = (Block) CompiledStdlib.call(maze, "sash", Length.inches(9), Length.inches(3));
        Block stone = (Block) CompiledStdlib.call(maze, "stone", Length.inches(3));
        Block block = Block.plain(org.calicograph.fabric.Role.MEDIUM.standIn(), Length.inches(9), Length.inches(9));
        Patchwork top = Setting.sashed(3, 3, Length.inches(3), org.calicograph.fabric.Role.LIGHT.standIn(), org.calicograph.fabric.Role.LIGHT.standIn()).framedToo().pieced(sash, stone).of(block);
        assertEquals(Length.inches(39), top.width());
        assertEquals(9 + 24 * 3 + 16 * 7, top.patchCount());
        Golden.picture("stdlib/garden-maze", PatchworkPicture.of(top).scaled(0.2));
        Block shorter = (Block) CompiledStdlib.call(maze, "sash", Length.inches(8), Length.inches(3));
        assertTrue(assertThrows(RuntimeException.class, () -> Setting.sashed(3, 3, Length.inches(3), org.calicograph.fabric.Role.LIGHT.standIn(), org.calicograph.fabric.Role.LIGHT.standIn())
                .pieced(shorter, stone).of(block)).getMessage().contains("make it 9 in x 3 in"));
    }

    @Test
    void a_bargello_wave_rises_and_falls_in_whole_cloths() {
        List<org.calicograph.fabric.Fabric> run = new java.util.ArrayList<>();
        for (int i = 0; i < 10; i++) {
            run.add(org.calicograph.fabric.Fabric.of("tide " + i, String.format("#%02x%02x%02x", 30 + 20 * i, 60 + 17 * i, 90 + 14 * i)));
        }
        Assembly wave = (Assembly) CompiledStdlib.call(CompiledStdlib.named("Bargello"), "wave", run, Length.inches(1), 24, 4, Length.inches("1/2"), Length.inches(2));
        assertEquals(240, wave.patchCount());
        assertEquals(Length.inches(10), wave.height());
        Golden.picture("stdlib/bargello", PatchworkPicture.of(wave).scaled(0.3));
    }
}
