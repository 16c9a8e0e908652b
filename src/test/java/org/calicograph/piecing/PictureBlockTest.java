package org.calicograph.piecing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.calicograph.Golden;
import org.calicograph.colour.Photo;
import org.calicograph.geometry.Polygons;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.seams.FewestSections;
import org.calicograph.seams.Sections;
import org.calicograph.seams.Unit;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;

class PictureBlockTest {

    /** A mill on a hill: tower, cap, two sails, sky and ground. */
    static PictureBlock mill() {
        return PictureBlock.of("Mill", Length.inches(10), Length.inches(12))
                .line(0, 9, 10, 8.2).line(0, 4.5, 10, 4.5).line(3.9, 8.69, 4.5, 4.5).line(6.1, 8.51, 5.5, 4.5)
                .line(6.1, 4.5, 5, 3).line(5, 3, 3.9, 4.5).line(2.4, 8.81, 0, 5.6);
    }

    private static PictureBlock random(Random chance, int lines) {
        PictureBlock picture = PictureBlock.of("Drift", Length.inches(8), Length.inches(8));
        if (chance.nextInt(4) == 0) {
            double a = 1 + chance.nextInt(4) / 2.0;
            double b = 5 + chance.nextInt(4) / 2.0;
            picture = picture.line(a, 0, a, b).line(0, b, b, b).line(b, 8, b, a).line(8, a, a, a);
        }
        while (picture.lines().size() < lines) {
            try {
                PictureBlock next = picture.line(chance.nextInt(17) / 2.0, chance.nextInt(17) / 2.0, chance.nextInt(17) / 2.0, chance.nextInt(17) / 2.0);
                next.words();
                picture = next;
            } catch (IllegalArgumentException e) {
                // Too short, or on another line: draw another.
            }
        }
        return picture;
    }

    /**
     * By trying: a set of patches whose hull is no larger than they are is convex; one foundation holds a set if patches can be taken off one by one
     * leaving a convex set each time; two convex sets that make a convex one meet along one straight edge.
     */
    private static final class ByTrying {
        private final List<Geometry> shapes = new ArrayList<>();
        private final Map<Integer, Boolean> convex = new HashMap<>();
        private final Map<Integer, Boolean> one = new HashMap<>();
        private final Map<Integer, Integer> fewest = new HashMap<>();

        ByTrying(List<Unit.Single> patches) {
            patches.forEach(p -> shapes.add(Polygons.of(p.shape(), 1e-4)));
        }

        boolean convex(int set) {
            return convex.computeIfAbsent(set, s -> {
                List<Geometry> all = new ArrayList<>();
                double area = 0;
                for (int i = 0; i < shapes.size(); i++) {
                    if ((s >> i & 1) != 0) {
                        all.add(shapes.get(i));
                        area += shapes.get(i).getArea();
                    }
                }
                double hull = Polygons.FACTORY.createGeometryCollection(all.toArray(Geometry[]::new)).convexHull().getArea();
                return Math.abs(hull - area) < 1e-6;
            });
        }

        boolean one(int set) {
            Boolean known = one.get(set);
            if (known == null) {
                known = Integer.bitCount(set) == 1;
                for (int i = 0; i < shapes.size() && !known; i++) {
                    int rest = set & ~(1 << i);
                    known = (set >> i & 1) != 0 && convex(1 << i) && convex(rest) && one(rest);
                }
                one.put(set, known);
            }
            return known;
        }

        int fewest(int set) {
            Integer known = fewest.get(set);
            if (known == null) {
                known = one(set) ? 1 : 1000;
                for (int part = set - 1 & set; part > 0 && known > 1; part = part - 1 & set) {
                    if (convex(part) && convex(set & ~part)) {
                        known = Math.min(known, fewest(part) + fewest(set & ~part));
                    }
                }
                fewest.put(set, known);
            }
            return known;
        }
    }

    @Test
    void the_fewest_sections_are_as_few_as_any_order_of_sewing_needs() {
        Random chance = new Random(11);
        int several = 0;
        int not = 0;
        for (int k = 0; k < 200; k++) {
            PictureBlock picture = random(chance, 3 + chance.nextInt(3));
            List<Unit.Single> faces = picture.patches();
            if (faces.size() > 11) {
                continue;
            }
            int fewest = new ByTrying(faces).fewest((1 << faces.size()) - 1);
            Optional<FewestSections.Found> found = FewestSections.of(faces);
            assertThat(found.isPresent()).as("case " + k).isEqualTo(fewest < 1000);
            assertThat(picture.isSewable()).isEqualTo(fewest < 1000);
            if (found.isPresent()) {
                assertThat(found.get().sections()).as("case " + k).hasSize(fewest);
                assertThat(found.get().isProved()).isTrue();
                assertThat(found.get().joins()).hasSize(fewest - 1);
                several += fewest > 1 ? 1 : 0;
            } else {
                not++;
                assertThat(picture.words()).contains("no line runs right through");
                assertThat(FewestSections.stuck(faces).size()).isGreaterThan(3);
            }
        }
        assertThat(several).isGreaterThan(20);
        assertThat(not).isGreaterThan(0);
    }

    @Test
    void the_patches_cover_the_picture_and_each_is_numbered_in_its_section() {
        Block block = mill().block();
        assertThat(block.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum()).isCloseTo(120, within(1e-6));
        assertThat(block.patches()).extracting(Patch::id).contains("A1").doesNotHaveDuplicates();
        assertThat(mill().words()).contains("the fewest there can be");
    }

    @Test
    void a_photograph_gives_the_patches_their_values() {
        Photo evening = Photo.drawn(100, 120, (x, y) -> y > 85 ? 0x202020 : 0xd8d8d8);
        Block block = mill().over(evening).inValues(3).block();
        for (Patch p : block.patches()) {
            boolean ground = p.shape().centroid().y() > 8.9;
            assertThat(p.role().name()).as(p.id() + " at " + p.shape().centroid()).isEqualTo(ground ? "value 1" : "value 3");
        }
    }

    @Test
    void a_pinwheel_of_lines_that_stop_short_is_refused_with_its_patches() {
        // A square that four lines whirl round: each stops at the next (common practice: it needs a partial seam).
        PictureBlock three = PictureBlock.of("Whirl", Length.inches(9), Length.inches(9)).line(3, 0, 3, 6).line(0, 6, 6, 6).line(6, 9, 6, 3);
        assertThat(three.isSewable()).isTrue();
        PictureBlock whirl = three.line(9, 3, 3, 3);
        assertThat(whirl.isSewable()).isFalse();
        assertThat(whirl.words()).isEqualTo("it can't be sewn with straight seams: no line runs right through patches 1, 2, 3, 4, 5; carry one of the lines among them on to the far side");
        assertThatThrownBy(whirl::block).hasMessageContaining("no line runs right through");
        assertThat(whirl.table().rows()).hasSize(4);
        assertThat(whirl.withoutLast().line(9, 3, 0, 3).isSewable()).as("one carried on to the far side").isTrue();
        assertThatThrownBy(() -> PictureBlock.of("Off", Length.inches(4), Length.inches(4)).line(1, 1, 9, 1)).hasMessageContaining("line 1").hasMessageContaining("leaves the picture");
        assertThatThrownBy(() -> mill().line(1, 1, 1.01, 1)).hasMessageContaining("too short");
        assertThatThrownBy(() -> mill().line(0, 0, 5, 0).picture()).hasMessageContaining("lies on the edge");
        assertThatThrownBy(() -> mill().line(5, 8.6, 8, 8.36).picture()).hasMessageContaining("lies on line 1");
    }

    @Test
    void sixty_patches_are_split_with_proof() {
        Random chance = new Random(2);
        PictureBlock picture = random(chance, 9);
        while (picture.lines().size() < 30) {
            PictureBlock next = random(chance, 1);
            try {
                PictureBlock tried = picture.line(next.lines().get(0).from().x(), next.lines().get(0).from().y(), next.lines().get(0).to().x(), next.lines().get(0).to().y());
                if (tried.isSewable()) {
                    picture = tried;
                }
            } catch (IllegalArgumentException e) {
                // On another line.
            }
        }
        assertThat(picture.words()).contains("patches in");
        assertThat(picture.block().patches().size()).isGreaterThan(40);
    }

    @Test
    void a_mill_looks_as_it_was_accepted() {
        Golden.picture("piecing/mill", mill().picture());
        for (Sections.Section section : mill().foundation().sections()) {
            double own = section.patches().stream().mapToDouble(p -> p.shape().area().squareInches()).sum();
            assertThat(Foundation.outline(section).area().squareInches()).isCloseTo(own, within(1e-6));
        }
        Golden.picture("piecing/mill-foundations", mill().foundation().picture());
        assertThat(mill().foundation().joins()).hasSize(mill().foundation().sections().size() - 1);
    }
}
