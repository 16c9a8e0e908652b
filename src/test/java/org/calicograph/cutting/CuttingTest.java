package org.calicograph.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.assertj.core.api.SoftAssertions;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Print;
import org.calicograph.measure.Length;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.setting.Setting;
import org.calicograph.border.Border;
import org.calicograph.quilt.Medallion;
import org.calicograph.quilt.Quilt;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.layout.Layout;
import org.calicograph.cutting.layout.LayoutSearch;
import org.calicograph.cutting.layout.LegalCut;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.junit.jupiter.api.Test;

class CuttingTest {

    /** The laws hold of any search, so a short one will do. */
    private static final LayoutSearch SHORT = new LayoutSearch(1_500, 2);

    /** Charts of squares per yard by usable width. A row whose count the grid contradicts must be contradicted here too. */
    @Test
    void squares_per_yard_agree_with_charts_and_the_wrong_rows_are_refused() {
        SoftAssertions soft = new SoftAssertions();
        int refused = 0;
        for (Map<String, String> row : Figures.of("squares_per_fabric")) {
            Length width = Length.parse(row.get("usable_width_in"));
            Length length = Length.parse(row.get("length_in"));
            Length square = Length.parse(row.get("cut_square_in"));
            int published = Integer.parseInt(row.get("published_count"));
            Blank blank = Blank.of("A", square, square);
            int most = (int) (width.units() / square.units()) * (int) (length.units() / square.units());
            soft.assertThat(LayoutSearch.QUICK.lay(width, Collections.nCopies(most, blank)).length()).as(row.toString()).isLessThanOrEqualTo(length);
            // Equal squares lie best in the grid: one more goes beyond the length, and the bound proves it.
            soft.assertThat(LayoutSearch.QUICK.lay(width, Collections.nCopies(most + 1, blank)).length()).as(row.toString()).isGreaterThan(length);
            if (row.get("check").equals("ok")) {
                soft.assertThat(published).as(row.toString()).isEqualTo(most);
            } else {
                refused++;
                soft.assertThat(published).as("not what the grid gives: " + row).isNotEqualTo(most);
            }
        }
        soft.assertThat(refused).isEqualTo(10);
        soft.assertAll();
    }

    /** Rows that leave a strip of the yard for straightening are told from those that count what the yard gives. */
    @Test
    void strips_per_yard_agree_with_charts() {
        int short_ = 0;
        for (Map<String, String> row : Figures.of("strips_per_yard")) {
            Length strip = Length.parse(row.get("cut_strip_in"));
            Length length = Length.parse(row.get("length_in"));
            Blank blank = new Blank("A", Length.inches(40), strip, false);
            int most = (int) (length.units() / strip.units());
            assertThat(LayoutSearch.QUICK.lay(Length.inches(40), Collections.nCopies(most, blank)).length()).isLessThanOrEqualTo(length);
            assertThat(LayoutSearch.QUICK.lay(Length.inches(40), Collections.nCopies(most + 1, blank)).length()).isGreaterThan(length);
            boolean whole = row.get("check").equals("ok");
            short_ += whole ? 0 : 1;
            assertThat(Integer.parseInt(row.get("published_count"))).as(row.toString()).isEqualTo(whole ? most : most - 1);
        }
        assertThat(short_).isEqualTo(3);
    }

    /** A copied chart gives 35 seven-inch squares from 44 x 36 in; six across and five down are 30. */
    @Test
    void thirty_five_seven_inch_squares_do_not_come_from_a_yard() {
        Blank seven = Blank.of("A", Length.inches(7), Length.inches(7));
        Layout layout = LayoutSearch.USUAL.lay(Length.inches(44), Collections.nCopies(35, seven));
        assertThat(layout.bound().length()).isGreaterThan(Length.inches(36));
        assertThat(layout.length()).isEqualTo(Length.inches(42));
    }

    /** a page of quilt maths: 100 pieces of 3 1/2 in at 12 from a 44 in strip take 9 strips. */
    @Test
    void a_hundred_squares_take_nine_strips() {
        Blank a = Blank.of("A", Length.inches("3 1/2"), Length.inches("3 1/2"));
        assertThat(LayoutSearch.USUAL.lay(Length.inches(44), Collections.nCopies(100, a)).length()).isEqualTo(Length.inches("31 1/2"));
    }

    @Property(tries = 25)
    void a_quilts_cutting_keeps_the_laws(@ForAll Random random) {
        Quilt quilt = GeneratedQuilt.small(random);
        Cutting cutting = Cutting.of(quilt).searched(SHORT);
        double sewn = 0;
        for (FabricCut f : cutting.fabrics()) {
            List<Blank> asked = asked(f, cutting.rules());
            LegalCut.check(f.layout(), asked);
            FabricCut strips = f.ofStrips(cutting.rules());
            LegalCut.check(strips.layout(), asked);
            FabricCut least = cutting.fromLeastCloth().fabrics().get(cutting.fabrics().indexOf(f));
            LegalCut.check(least.layout(), asked);
            // Strips are cut by where they have one buy little more, and what is bought covers what is laid.
            double more = strips.yardage().toBuy().minus(least.yardage().toBuy()).inInches();
            assertThat(least.yardage().toBuy()).isLessThanOrEqualTo(f.yardage().toBuy());
            assertThat(f.inStrips()).as("%s", more).isEqualTo(more <= Math.max(4.5, least.yardage().toBuy().inInches() / 20) + 1e-9);
            assertThat(f.yardage().laid()).isEqualTo(f.layout().length());
            assertThat(f.yardage().toBuy()).isGreaterThanOrEqualTo(f.layout().length().plus(cutting.rules().reserve()));
            assertThat(f.areaCut().squareInches()).isGreaterThanOrEqualTo(f.areaSewn().squareInches());
            assertThat(f.layout().used().squareInches()).isGreaterThanOrEqualTo(f.areaSewn().squareInches());
            assertThat(f.yardage().toBuy()).isGreaterThanOrEqualTo(f.yardage().bound().length());
            sewn += f.areaSewn().squareInches();
        }
        assertThat(sewn).isCloseTo(quilt.top().outline().area().squareInches(), within(1e-3));
        assertThat(cutting.fabrics().stream().flatMap(f -> f.pieces().stream()).mapToInt(Piece::count).sum()).isEqualTo(quilt.patches().size());
    }

    /** Strips across for what is joined, after checking that they make up the long pieces; every other piece as it is. */
    private static List<Blank> asked(FabricCut f, CuttingRules rules) {
        List<Blank> asked = new ArrayList<>();
        List<Length> joined = new ArrayList<>();
        for (StripJoins join : f.joins()) {
            join.pieces().forEach(piece -> joined.add(piece.length()));
        }
        List<Length> widths = new ArrayList<>();
        List<String> names = new ArrayList<>();
        asked.addAll(f.finish());
        for (Piece p : f.pieces()) {
            for (var run : p.method().runs(p.count(), f.fabric().usableWidth())) {
                if (joined.remove(Length.max(run.across(), run.along()))) {
                    widths.add(Length.min(run.across(), run.along()));
                    names.add(p.letter());
                } else {
                    asked.add(new Blank(p.letter(), run.across(), run.along(), true));
                }
            }
        }
        assertThat(joined).isEmpty();
        assertThat(widths.stream().distinct()).as("one border in a quilt of this kind").hasSizeLessThanOrEqualTo(1);
        for (StripJoins join : f.joins()) {
            join.strips().forEach(s -> asked.add(Blank.of(String.join("+", names.stream().distinct().toList()),
                    Length.min(f.fabric().usableWidth(), s.roundedUpTo(rules.rulerStep())), widths.get(0))));
        }
        return asked;
    }

    private static Cutting narrowBorder() {
        Quilt quilt = Medallion.around(GeneratedQuilt.of(new Random(3)).top())
                .with(Border.plain(Fabric.of("tar", "#222222"), Length.inches(1))).bound(Fabric.of("tar", "#222222"));
        return Cutting.of(quilt);
    }

    private static FabricCut tar(Cutting cutting) {
        return cutting.fabrics().stream().filter(f -> f.fabric().name().equals("tar")).findFirst().orElseThrow();
    }

    /** Common practice: narrow borders in a fabric of their own are joined from strips across the cloth. */
    @Test
    void a_narrow_border_alone_is_joined_since_that_takes_less_cloth() {
        Cutting cutting = narrowBorder();
        FabricCut joined = tar(cutting);
        FabricCut whole = tar(cutting.borders(joined.fabric(), BorderCloth.Way.LENGTHWISE));
        FabricCut slanted = tar(cutting.borders(BorderCloth.Way.DIAGONAL_JOINS));
        assertThat(joined.joins()).hasSize(1);
        assertThat(joined.yardage().toBuy()).isLessThan(whole.yardage().toBuy());
        assertThat(whole.joins()).isEmpty();
        assertThat(slanted.joins().get(0).way()).isEqualTo(BorderCloth.Way.DIAGONAL_JOINS);
        assertThat(joined.choice()).matches("joined straight from \\d+ strips across; in one length they would take .* yd more");
        assertThat(whole.choice()).startsWith("in one length along the selvedge; joined straight from ").endsWith(" less");
        assertThat(cutting.shopping().toString()).contains(joined.choice());
        assertThat(joined.table(cutting.rules()).toString()).contains("First join strips with straight seams: ");
        assertThat(joined.areaCut().squareInches()).isGreaterThanOrEqualTo(joined.areaSewn().squareInches());
    }

    @Test
    void another_fabric_than_those_cut_is_refused_with_their_names() {
        assertThatThrownBy(() -> narrowBorder().borders(Fabric.of("salt", "#ffffff"), BorderCloth.Way.LENGTHWISE))
                .hasMessageStartingWith("nothing is cut from salt; name one of ").hasMessageContaining("tar");
    }

    /**
     * Whatever is added, and to whatever layout that leads, one never buys less than what the bound of the
     * fewer pieces asks for; so an amount that is proved least can't fall.
     */
    @Property(tries = 60)
    void the_yardage_never_falls_below_the_least_when_a_piece_is_added(@ForAll Random random) {
        List<Blank> blanks = GeneratedQuilt.blanks(random);
        CuttingRules rules = CuttingRules.INCH;
        Layout before = SHORT.lay(Fabric.USABLE_WIDTH, blanks);
        Yardage fewer = Yardage.of(before.length(), before.bound(), rules);
        assertThat(fewer.least()).isLessThanOrEqualTo(fewer.toBuy());
        List<Blank> all = new ArrayList<>(blanks);
        for (int i = 0; i < 3; i++) {
            all.add(blanks.get(random.nextInt(blanks.size())));
            Layout after = SHORT.lay(Fabric.USABLE_WIDTH, all);
            LegalCut.check(after, all);
            Yardage more = Yardage.of(after.length(), after.bound(), rules);
            assertThat(more.toBuy()).isGreaterThanOrEqualTo(fewer.least());
            if (fewer.isLeast()) {
                assertThat(more.toBuy()).isGreaterThanOrEqualTo(fewer.toBuy());
            }
        }
    }

    @Test
    void inches_and_metric_agree_on_what_is_sewn() {
        Quilt quilt = GeneratedQuilt.of(new Random(3));
        Cutting inch = Cutting.of(quilt);
        Cutting metric = inch.by(new CuttingRules(Length.inches(1, 4), Length.mm(1), Length.mm(0.25), 0, Length.cm(10), Length.cm(10)));
        for (int i = 0; i < inch.fabrics().size(); i++) {
            assertThat(metric.fabrics().get(i).areaSewn()).isEqualTo(inch.fabrics().get(i).areaSewn());
            // In strips or not, whichever takes the same purchase: amounts to buy agree within 6 % and the coarser step.
            double inches = inch.fabrics().get(i).yardage().toBuy().inInches();
            assertThat(metric.fabrics().get(i).yardage().toBuy().inInches()).isCloseTo(inches, within(0.06 * inches + 4.5));
        }
    }

    @Test
    void shrinkage_and_reserve_are_added_before_rounding_up() {
        CuttingRules rules = CuttingRules.INCH.shrinking(0.04);
        Blank a = Blank.of("A", Length.inches(40), Length.inches(24));
        Layout layout = LayoutSearch.QUICK.lay(Fabric.USABLE_WIDTH, List.of(a));
        Yardage yardage = Yardage.of(layout.length(), layout.bound(), rules);
        assertThat(yardage.shrunk()).isEqualTo(Length.inches(25));
        assertThat(yardage.toBuy()).isEqualTo(Length.inches("31 1/2"));
        assertThat(yardage.asked(rules)).isEqualTo("7/8 yd");
    }

    private static Fabric running(Print.Direction way) {
        return Fabric.of("reeds", "#7a8f5a").printed(Print.of(Print.Scale.SMALL).running(way));
    }

    @Test
    void a_directed_print_keeps_its_direction() {
        Quilt quilt = GeneratedQuilt.of(new Random(9));
        Fabric first = quilt.patches().get(0).fabric();
        Quilt directed = quilt.withTop(quilt.top().recoloured(p -> p.fabric().isSameClothAs(first) ? running(Print.Direction.ONE_WAY) : p.fabric()));
        FabricCut cut = Cutting.of(directed).fabrics().get(0);
        assertThat(cut.fabric().name()).isEqualTo("reeds");
        assertThat(cut.layout().spots()).noneMatch(s -> s.taken().turned());
    }

    /** Counted by hand: four half squares of one print, one each way up; a square gives two that stand alike, or upside down to each other. */
    @Test
    void triangles_of_a_print_that_runs_one_way_stand_upright_in_the_quilt() {
        Block windmill = Block.of("Windmill", Region.rectangle(new Box(0, 0, 6, 6)), List.of(
                half("1", 0, 0, 3, 0, 0, 3), half("2", 6, 0, 6, 3, 3, 0), half("3", 6, 6, 3, 6, 6, 3), half("4", 0, 6, 0, 3, 3, 6),
                half("5", 3, 0, 6, 3, 3, 6, 0, 3)));
        assertThat(triangles(windmill, Print.Direction.ANY)).as("kinds and squares to cut").containsExactly(1, 2);
        assertThat(triangles(windmill, Print.Direction.TWO_WAY)).containsExactly(2, 2);
        assertThat(triangles(windmill, Print.Direction.ONE_WAY)).containsExactly(4, 4);
    }

    private static Patch half(String id, double... corners) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < corners.length; i += 2) {
            points.add(new Point(corners[i], corners[i + 1]));
        }
        return Patch.of(id, Role.DARK, Region.of(Path.polygon(points)));
    }

    private static List<Integer> triangles(Block block, Print.Direction way) {
        FabricCut cut = Cutting.of(block.recoloured(p -> running(way))).fabrics().get(0);
        List<Piece> halves = cut.pieces().stream().filter(p -> p.method().shape().equals("half-square triangle")).toList();
        return List.of(halves.size(), halves.stream().mapToInt(p -> p.method().runs(p.count(), cut.fabric().usableWidth()).size()).sum());
    }

    /** Common practice: on point, a print that runs one way is cut along the bias so that it stands upright. */
    @Test
    void on_point_a_directed_square_is_cut_as_it_stands() {
        Block plain = Block.plain(running(Print.Direction.ONE_WAY), Length.inches(6), Length.inches(6));
        Cutting cutting = Cutting.of(Setting.onPoint(2, 2, Fabric.of("sky", "#c8d8e8")).of(plain));
        Piece square = cutting.fabrics().stream().flatMap(f -> f.pieces().stream()).filter(p -> p.fabric().name().equals("reeds"))
                .filter(p -> p.finished().area().squareInches() > 35).findFirst().orElseThrow();
        assertThat(square.finished().bounds().width()).isCloseTo(6 * Math.sqrt(2), within(1e-6));
    }

    /** Counted by hand: 24 rectangles cut 4 1/2 x 8 1/2 in; across 13 in two lie side by side, across 40 in eight. */
    @Test
    void the_width_is_the_cloths_own() {
        Fabric silk = Fabric.of("silk", "#c8b8d8").printed(Print.of(Print.Scale.SMALL).running(Print.Direction.TWO_WAY));
        Block slab = Block.plain(silk, Length.inches(4), Length.inches(8));
        for (int[] row : new int[][] {{13, 12}, {40, 3}, {108, 1}}) {
            Fabric cloth = silk.wide(Length.inches(row[0]));
            Cutting cutting = Cutting.of(Setting.straight(4, 6).of(slab.recoloured(p -> cloth)));
            assertThat(cutting.fabrics().get(0).layout().length()).as(row[0] + " in wide").isEqualTo(Length.inches("8 1/2").times(row[1]));
            assertThat(cutting.fabrics().get(0).layout().width()).isEqualTo(Length.inches(row[0]));
        }
    }

    @Test
    void fabrics_of_one_name_and_two_colours_are_two_purchases() {
        Fabric one = Fabric.of("sand", "#e8dcc0");
        Fabric other = Fabric.of("sand", "#c9b48a");
        Block half = Block.plain(one, Length.inches(6), Length.inches(6));
        Cutting cutting = Cutting.of(Setting.straight(2, 1).of((c, r) -> c == 0 ? half : half.recoloured(p -> other)));
        assertThat(cutting.fabrics()).extracting(FabricCut::name).containsExactly("sand", "sand (2)");
        assertThat(cutting.fabrics()).allSatisfy(f -> assertThat(f.pieces().stream().mapToInt(Piece::count).sum()).isEqualTo(1));
    }

    /** Counted by hand: a quilt of 24 x 24 in has 108 in of binding, three strips of 40 in; a backing 32 in wide is one length. */
    @Test
    void what_finishes_the_quilt_is_in_the_plan_of_its_cloth() {
        Fabric navy = Fabric.of("navy", "#24425c");
        Fabric wide = Fabric.of("sailcloth", "#d8d8d0").wide(Length.inches(108));
        Quilt quilt = Quilt.of("Small", Setting.straight(2, 2).of(Block.plain(navy, Length.inches(12), Length.inches(12)))).bound(navy).backed(wide);
        Cutting cutting = Cutting.of(quilt);
        FabricCut top = cutting.fabrics().get(0);
        assertThat(top.finish()).hasSize(3).allMatch(b -> b.name().equals("binding"));
        assertThat(top.layout().spots()).hasSize(4 + 3);
        assertThat(top.strips(cutting.rules()).toString()).contains("binding");
        FabricCut back = cutting.fabrics().get(1);
        assertThat(back.finish()).extracting(Blank::name).containsExactly("backing", "sleeve");
        assertThat(back.layout().length()).isEqualTo(Length.inches(32 + 9));
    }

    /** Added up from the printed words of every list: what the strips take is what is laid, and less than is bought. */
    @Property(tries = 40)
    void the_printed_strips_add_up_to_the_cloth_that_is_bought(@ForAll Random random) {
        Fabric cloth = Fabric.of("frame", "#445566").wide(Length.inches(36 + random.nextInt(20)));
        Quilt quilt = GeneratedQuilt.small(random);
        Cutting cutting = Cutting.of(quilt.withTop(quilt.top().recoloured(p -> p.fabric().name().equals("frame") ? cloth : p.fabric()))).searched(SHORT);
        for (FabricCut f : cutting.fabrics()) {
            double across = 0;
            double along = 0;
            for (var row : f.strips(cutting.rules()).rows()) {
                double width = row.get(0).value() * Length.parse(row.get(1).text()).inInches();
                String way = row.get(2).text();
                across += way.equals("across the cloth") ? width : 0;
                along = way.startsWith("along the selvedge, ") ? Math.max(along, Length.parse(way.substring(20)).inInches()) : along;
            }
            assertThat(across).as(f.name()).isLessThanOrEqualTo(f.layout().length().inInches() + 1e-9);
            assertThat(Math.max(across, along) + cutting.rules().reserve().inInches()).isLessThanOrEqualTo(f.yardage().toBuy().inInches() + 1e-9);
        }
    }
}
