package org.calicograph.stdlib;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.calicograph.Golden;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.measure.Length;
import org.calicograph.quilting.Motif;
import org.calicograph.stitching.Route;
import org.junit.jupiter.api.Test;

class StdlibMotifsTest {

    static List<Motif> motifs() {
        List<Motif> all = new ArrayList<>();
        for (String name : CompiledStdlib.names()) {
            if (name.endsWith("Motifs")) {
                for (Object m : (List<?>) CompiledStdlib.call(CompiledStdlib.named(name), "all")) {
                    all.add((Motif) m);
                }
            }
        }
        return all;
    }

    @Test
    void there_are_at_least_25_motifs_with_names_of_their_own() {
        List<Motif> all = motifs();
        assertThat(all.size()).isGreaterThanOrEqualTo(25);
        assertThat(new HashSet<>(all.stream().map(Motif::name).toList())).hasSize(all.size());
        assertThat(new HashSet<>(all.stream().map(Motif::paths).toList())).hasSize(all.size());
    }

    @Test
    void every_motif_fits_the_space_it_is_given_and_can_be_sewn() {
        for (Motif m : motifs()) {
            Box space = new Box(10, 20, 16, 26);
            List<Path> lines = m.fitted(space, 0.5);
            for (Path p : lines) {
                Box b = p.bounds();
                assertThat(b.left()).as(m.name()).isGreaterThanOrEqualTo(10.5 - 1e-6);
                assertThat(b.right()).as(m.name()).isLessThanOrEqualTo(15.5 + 1e-6);
                assertThat(b.top()).as(m.name()).isGreaterThanOrEqualTo(20.5 - 1e-6);
                assertThat(b.bottom()).as(m.name()).isLessThanOrEqualTo(25.5 + 1e-6);
            }
            assertThat(m.scaledTo(Length.inches(7)).bounds().width()).as(m.name()).isBetween(7 - 1e-9, 7 + 1e-9);
            assertThat(Route.over(lines).starts()).as(m.name()).isLessThanOrEqualTo(6);
        }
    }

    /** Each in a square of its own, its name beneath. */
    @Test
    void the_motifs_are_drawn_on_a_contact_sheet() {
        List<Picture> parts = new ArrayList<>();
        List<Motif> all = motifs();
        for (int i = 0; i < all.size(); i++) {
            Box space = new Box(i % 7 * 5, i / 7 * 5.6, i % 7 * 5 + 5, i / 7 * 5.6 + 5);
            parts.add(new Picture.Shape(all.get(i).fitted(space, 0.5), Paint.NONE, Pen.of(Colour.hex("#24425c"), 0.06)));
            parts.add(Picture.text(all.get(i).name(), Point.of(space.centre().x(), space.bottom() + 0.3), 0.5));
        }
        Golden.picture("quilting/motifs", Picture.group(parts));
    }
}
