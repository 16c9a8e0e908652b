package org.calicograph.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.calicograph.border.Border;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.drawing.Table;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilt.Quilt;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;

/** What is said of a patch is held against the tables that are printed: both are words, and are read here as a cutter reads them. */
class SpokenCutTest {

    private static final Fabric TAR = Fabric.of("tar", "#222222");

    /** Triangles of both kinds, a slanted piece that is cut from strips, two that no ruler cuts, and a border longer than the cloth is wide. */
    private static Quilt allKinds() {
        Block block = Block.onGrid("reach", 4, Length.inches(12))
                .patch(Role.DARK, 0, 0, 1, 0, 2, 1, 1, 1).patch(Role.LIGHT, 0, 0, 1, 1, 0, 1).patch(Role.LIGHT, 1, 0, 2, 0, 2, 1)
                .quarters(2, 0, 1, Role.DARK, Role.LIGHT, Role.DARK, Role.LIGHT)
                .patch(Role.DARK, 3, 0, 3.31, 0, 3.57, 1, 3, 1).patch(Role.LIGHT, 3.31, 0, 4, 0, 4, 1, 3.57, 1)
                .rectangle(Role.MEDIUM, 0, 1, 4, 3).block();
        return Medallion.around(Setting.straight(3, 4).of(block)).with(Border.plain(TAR, Length.inches(1))).bound(TAR);
    }

    @Test
    void what_is_said_of_every_patch_is_what_the_printed_tables_say() {
        List<Quilt> quilts = new ArrayList<>(List.of(allKinds()));
        for (int seed = 0; seed < 3; seed++) {
            quilts.add(GeneratedQuilt.small(new Random(seed)));
        }
        Set<String> seen = new TreeSet<>();
        for (Quilt quilt : quilts) {
            Cutting cutting = Cutting.of(quilt);
            for (FabricCut f : cutting.fabrics()) {
                f.spoken(cutting.rules()).forEach((piece, told) -> seen.addAll(agree(told, piece, f.table(cutting.rules()), f.strips(cutting.rules()))));
            }
            Map<String, String> words = cutting.ofPatches();
            assertThat(words.keySet()).containsExactlyInAnyOrderElementsOf(quilt.patches().stream().map(p -> p.id()).toList());
            quilt.patches().forEach(p -> assertThat(words.get(p.id())).as(p.id()).startsWith(p.fabric().name() + ", "));
        }
        assertThat(seen).as("kinds met").contains("half-square triangle", "quarter-square triangle", "template", "joined", "slanted", "square");
    }

    /** Compares, and tells which kinds of cutting were met. */
    private static Set<String> agree(String told, Piece piece, Table pieces, Table strips) {
        List<String> row = pieces.rows().stream().filter(r -> r.get(0).text().equals(piece.letter())).findFirst().orElseThrow()
                .stream().map(Table.Entry::text).toList();
        Set<String> met = new HashSet<>(Set.of(row.get(2)));
        assertThat(told).as("shape").startsWith(row.get(2) + ", ");
        String said = told.substring(told.indexOf("; ") + 2);
        assertThat(said).as("count").contains(row.get(1).equals("1") ? "; the only one " : "; " + row.get(1) + " of them ");
        // The table: '3 squares, 7 1/4 in', '2 of 42 1/2 in x 1 1/2 in', '4 strips of up to 9, 3 1/2 in x 4 7/8 in', 'template C'.
        String from = row.get(4);
        String size = from.replaceFirst(".*, |^\\d+ of ", "").replace(" in", "");
        if (from.startsWith("template")) {
            assertThat(said).startsWith("cut by " + from + "; ");
            met.add("template");
        } else if (from.contains("square")) {
            assertThat(said).startsWith("cut squares of " + size + " in, each ").contains(" from " + from.replaceFirst(",.*", "") + ", on ");
            assertThat(row.get(6)).contains(said.contains("each once corner") ? "once corner to corner" : "twice corner to corner");
        } else if (from.contains("strip")) {
            assertThat(said).startsWith("cut strips " + size.replaceFirst(" x .*", "") + " in wide");
            assertThat(said).satisfiesAnyOf(s -> assertThat(size).doesNotContain(" x "), s -> assertThat(s).contains(" " + size.replaceFirst(".* x ", "") + " in; "));
            met.add("slanted");
        } else {
            assertThat(said).startsWith("cut " + (size.contains(" x ") ? size : size + " x " + size) + " in");
        }
        int on = 0;
        for (List<Table.Entry> strip : strips.rows()) {
            Matcher m = Pattern.compile("\\d+ (\\S+) of ").matcher(strip.get(3).text());
            on += m.results().anyMatch(r -> List.of(r.group(1).split("\\+")).contains(piece.letter())) ? (int) strip.get(0).value() : 0;
        }
        assertThat(said).as("strips in %s", strips).containsPattern("(from|on) " + on + (on == 1 ? " strip" : " strips") + "($| joined|, as drawn)");
        // Parts with a plus between them are joined; 'as drawn' is what the strips' table says where a drawing has to be followed.
        assertThat(said.contains("joined end to end")).as("%s beside %s", said, row).isEqualTo(row.get(6).matches("First join strips.* \\+ .*"));
        assertThat(said.contains("as drawn")).isEqualTo(strips.rows().stream().allMatch(r -> r.get(3).text().endsWith("as drawn")));
        if (said.contains("joined")) {
            met.add("joined");
        }
        return met;
    }
}
