package org.calicograph.cutting.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.calicograph.Golden;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.measure.Length;
import org.calicograph.cutting.pieces.CutMethod;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.RotaryRules;
import org.junit.jupiter.api.Test;

class CutStepsTest {

    private static Layout small() {
        List<Blank> blanks = new ArrayList<>(Collections.nCopies(36, Blank.of("A", Length.inches("3 3/4"), Length.inches("3 3/4"))));
        blanks.addAll(Collections.nCopies(6, Blank.of("B", Length.inches("4 1/8"), Length.inches("4 1/8"))));
        return LayoutSearch.USUAL.lay(Length.inches(40), blanks);
    }

    private static Layout bordered() {
        List<Blank> blanks = new ArrayList<>(Collections.nCopies(4, Blank.of("A", Length.inches("3 1/2"), Length.inches("52 1/2"))));
        blanks.addAll(Collections.nCopies(30, Blank.of("B", Length.inches("2 7/8"), Length.inches("2 7/8"))));
        blanks.addAll(Collections.nCopies(12, Blank.of("C", Length.inches("6 1/2"), Length.inches("2 1/2"))));
        return LayoutSearch.USUAL.lay(Length.inches(40), blanks);
    }

    /** Counted from the steps alone, every blank comes free as often as it was asked for. */
    @Property(tries = 20)
    void following_the_steps_frees_every_blank(@ForAll @IntRange(min = 2, max = 40) int count, @ForAll Random random) {
        List<Blank> blanks = LayoutTest.blanks(count, random);
        int freed = 0;
        Layout layout = LayoutSearch.QUICK.lay(Length.inches(42), blanks);
        for (CutSteps.Step step : CutSteps.of(layout)) {
            freed += step.times() * (int) step.parts().stream().filter(Panel.Taken.class::isInstance).count();
            Length sum = step.parts().stream().map(step::size).reduce(Length.ZERO, Length::plus);
            assertThat(sum).isEqualTo(step.isAlong() ? step.panel().across() : step.panel().along());
        }
        assertThat(freed).isEqualTo(count);
    }

    @Test
    void the_whole_cloth_is_cut_first() {
        CutSteps.Step first = CutSteps.of(small()).get(0);
        assertThat(first.panel().across()).isEqualTo(Length.inches(40));
        assertThat(first.times()).isEqualTo(1);
    }

    @Test
    void steps_look_as_accepted() {
        Golden.picture("cutting/steps-squares", CutStepsPicture.of(small(), Colour.hex("#7a9aa8"), Length::toString));
        Golden.picture("cutting/steps-borders", CutStepsPicture.of(bordered(), Colour.hex("#a88a5a"), Length::toString));
    }

    @Test
    void layouts_look_as_accepted() {
        Golden.picture("cutting/layout-squares", LayoutPicture.of(small(), Colour.hex("#7a9aa8"), Length::toString));
        Golden.picture("cutting/layout-borders", LayoutPicture.of(bordered(), Colour.hex("#a88a5a"), Length::toString));
    }

    @Test
    void pieces_head_to_tail_look_as_accepted() {
        Map<String, CutMethod> methods = new LinkedHashMap<>();
        methods.put("A", RotaryRules.of(Region.polygon(new Point(0, 3), new Point(9, 3), new Point(6, 0), new Point(3, 0)), CuttingRules.INCH));
        methods.put("B", RotaryRules.of(Region.polygon(new Point(0, 3), new Point(3 * Math.sqrt(2), 3), new Point(3 + 3 * Math.sqrt(2), 0), new Point(3, 0)), CuttingRules.INCH));
        methods.put("C", RotaryRules.of(Region.polygon(new Point(0, 3.5), new Point(7 / Math.sqrt(3), 3.5), new Point(3.5 / Math.sqrt(3), 0)),
                CuttingRules.INCH));
        List<Blank> blanks = new ArrayList<>();
        Map<Blank, List<Path>> cuts = new LinkedHashMap<>();
        methods.forEach((name, method) -> method.runs(12, Length.inches(40)).forEach(run -> {
            blanks.add(Blank.of(name, run.across(), run.along()));
            cuts.put(blanks.get(blanks.size() - 1), method.drawnOn(run, 12, Length.inches(40)));
        }));
        Golden.picture("cutting/layout-nested", LayoutPicture.of(LayoutSearch.USUAL.lay(Length.inches(40), blanks), Colour.hex("#7a9aa8"),
                Length::toString, cuts::get));
    }
}
