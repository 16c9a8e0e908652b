package org.calicograph.piecing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.Golden;
import org.calicograph.drawing.Picture;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.setting.Setting;
import org.calicograph.seams.SeamKind;
import org.junit.jupiter.api.Test;

class SewingPlanTest {

    /** Four strips that go round a square, each over the end of the next. */
    private static Block spinning() {
        double[][] boxes = {{2, 2, 2, 2}, {0, 0, 4, 2}, {4, 0, 2, 4}, {2, 4, 4, 2}, {0, 2, 2, 4}};
        List<Patch> patches = new java.util.ArrayList<>();
        for (double[] b : boxes) {
            patches.add(Patch.of("" + patches.size(), patches.isEmpty() ? Role.ACCENT : patches.size() % 2 == 0 ? Role.DARK : Role.LIGHT,
                    Region.rectangle(new Box(b[0], b[1], b[0] + b[2], b[1] + b[3]))));
        }
        return Block.of("Capstan", Region.rectangle(new Box(0, 0, 6, 6)), patches);
    }

    private static Block star() {
        var draft = Block.onGrid("Lantern Star", 4, Length.inches(8));
        for (int corner = 0; corner < 4; corner++) {
            draft = draft.square(Role.BACKGROUND, corner % 2 * 3, corner / 2 * 3, 1);
        }
        return draft.square(Role.ACCENT, 1, 1, 2).gooseUp(1, 0, 1, Role.BACKGROUND, Role.DARK)
                .gooseUp(1, 3, 1, Role.DARK, Role.BACKGROUND)
                .rectangle(Role.LIGHT, 0, 1, 1, 2).rectangle(Role.LIGHT, 3, 1, 1, 2).block();
    }

    /** Common practice: the first seam is left open at one end, the others are whole, the last completes it. */
    @Test
    void a_ring_is_begun_with_a_part_seam_and_closed_by_number() {
        Stage stage = SewingPlan.of(spinning()).stages().get(0);
        List<Chain> chains = stage.chains();
        assertThat(chains).extracting(c -> c.sample().kind()).containsExactly(SeamKind.BEGUN, SeamKind.STRAIGHT, SeamKind.STRAIGHT, SeamKind.PARTIAL);
        assertThat(chains.get(0).how()).isEqualTo("sew only part of the way: leave the end open for the seam at d");
        assertThat(chains.get(3).how()).isEqualTo("sew the whole seam, then complete the seam that was begun at a");
        assertThat(stage.warnings()).isEqualTo("No order of straight seams alone exists: 1 part seam, one end left open; 1 partial seam.");
    }

    @Test
    void curves_alone_do_not_rule_out_an_order() {
        Path curve = Path.from(new Point(2, 0)).arcTo(new Point(0, 2), 0.4).lineTo(new Point(0, 0)).close();
        Path rest = Path.from(new Point(2, 0)).lineTo(new Point(3, 0)).lineTo(new Point(3, 3)).lineTo(new Point(0, 3)).lineTo(new Point(0, 2))
                .arcTo(new Point(2, 0), -0.4).close();
        Block path = Block.of("Path", Region.rectangle(new Box(0, 0, 3, 3)),
                List.of(Patch.of("1", Role.DARK, Region.of(curve)), Patch.of("2", Role.LIGHT, Region.of(rest))));
        assertThat(SewingPlan.of(path).stages().get(0).warnings()).isEqualTo("Besides straight seams: 1 curved seam.");
    }

    @Test
    void alike_seams_are_counted_into_one_chain() {
        SewingPlan plan = SewingPlan.of(Setting.straight(3, 2).of(star()));
        Stage block = plan.stages().get(0);
        assertThat(block.count()).isEqualTo(6);
        assertThat(block.chains()).allMatch(c -> c.times() % 6 == 0);
        int joinings = block.order().steps().size() * 6;
        assertThat(block.chains().stream().mapToInt(Chain::times).sum()).isEqualTo(joinings);
        assertThat(block.chains()).extracting(Chain::number).isSorted();
    }

    @Test
    void what_was_sewn_is_called_by_its_small_letter_only_after_the_step_that_makes_it() {
        List<Chain> chains = SewingPlan.of(star()).stages().get(0).chains();
        assertThat(chains.get(chains.size() - 1).name()).isEqualTo("Lantern Star");
        for (Chain c : chains) {
            for (String part : c.what().split("[^A-Za-z]+")) {
                if (!part.isEmpty() && Character.isLowerCase(part.charAt(0))) {
                    assertThat(chains.subList(0, c.number() - 1)).extracting(Chain::name).contains(part);
                }
            }
        }
    }

    /** Two rhomboids with a triangle each, mirror images of one another: the letters agree, the units do not. */
    @Test
    void mirror_images_are_made_separately() {
        Block halves = Block.of("Half Squares", Region.rectangle(new Box(0, 0, 4, 2)), List.of(
                patch("1", Role.DARK, 0, 0, 2, 0, 0, 2), patch("2", Role.LIGHT, 2, 0, 2, 2, 0, 2),
                patch("3", Role.DARK, 4, 0, 2, 0, 4, 2), patch("4", Role.LIGHT, 2, 0, 4, 2, 2, 2)));
        Block leaning = Block.of("Leaning", Region.rectangle(new Box(0, 0, 6, 2)), List.of(
                patch("1", Role.DARK, 0, 0, 2, 0, 3, 2, 0, 2), patch("2", Role.LIGHT, 2, 0, 3, 0, 3, 2),
                patch("3", Role.DARK, 6, 0, 4, 0, 3, 2, 6, 2), patch("4", Role.LIGHT, 4, 0, 3, 0, 3, 2)));
        assertThat(SewingPlan.of(halves).stages().get(0).chains().get(0).times()).as("half squares are their own mirror images").isEqualTo(2);
        assertThat(SewingPlan.of(leaning).stages().get(0).chains()).as("leaning left, leaning right, both").hasSize(3);
    }

    private static Patch patch(String id, Role role, double... corners) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            points.add(new Point(corners[i], corners[i + 1]));
        }
        return Patch.of(id, role, Region.of(Path.polygon(points)));
    }

    @Test
    void works_of_one_name_are_called_apart() {
        Block other = star().recoloured(patch -> patch.fabric().named(patch.fabric().name() + " two"));
        List<Stage> stages = SewingPlan.of(Setting.straight(2, 1).of((column, row) -> column == 0 ? star() : other)).stages();
        assertThat(stages).extracting(Stage::name).containsExactly("Lantern Star", "Lantern Star (2)", "the top");
    }

    @Test
    void an_exploded_unit_and_a_foundation_look_as_they_were_accepted() {
        Stage stage = SewingPlan.of(star()).stages().get(0);
        Picture steps = Picture.EMPTY;
        for (Picture step : stage.steps()) {
            steps = steps.bounds().width() == 0 ? step : steps.beside(step, 1);
        }
        Golden.picture("piecing/exploded", stage.exploded().above(steps, 1));
        Golden.picture("piecing/foundation", Foundation.of(star()).picture());
    }
}
