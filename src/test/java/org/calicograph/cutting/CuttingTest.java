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
import org.calicograph.measure.Length;
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
        Cutting cutting = Cutting.of("t", quilt.top(), CuttingRules.INCH, List.of(), SHORT);
        double sewn = 0;
        for (FabricCut f : cutting.fabrics()) {
            List<Blank> asked = asked(f, cutting.rules());
            LegalCut.check(f.layout(), asked);
            LegalCut.check(f.inStrips().layout(), asked);
            // Strips are cut by where they have one buy no more.
            boolean strips = f.ofStrips(cutting.rules()).yardage().toBuy().compareTo(f.yardage().toBuy()) <= 0;
            assertThat(f.toCut(cutting.rules())).isEqualTo(strips ? f.inStrips().layout() : f.layout());
            assertThat(f.areaCut().squareInches()).isGreaterThanOrEqualTo(f.areaSewn().squareInches());
            assertThat(f.layout().used().squareInches()).isGreaterThanOrEqualTo(f.areaSewn().squareInches());
            assertThat(f.yardage().toBuy()).isGreaterThanOrEqualTo(f.layout().bound().length());
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
        for (Piece p : f.pieces()) {
            for (var run : p.method().runs(p.count(), rules.usableWidth())) {
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
                    Length.min(rules.usableWidth(), s.roundedUpTo(rules.rulerStep())), widths.get(0))));
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
        assertThat(whole.choice()).startsWith("in one length along the selvage; joined straight from ").endsWith(" less");
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
        Layout before = SHORT.lay(rules.usableWidth(), blanks);
        Yardage fewer = Yardage.of(before.length(), before.bound(), rules);
        assertThat(fewer.least()).isLessThanOrEqualTo(fewer.toBuy());
        List<Blank> all = new ArrayList<>(blanks);
        for (int i = 0; i < 3; i++) {
            all.add(blanks.get(random.nextInt(blanks.size())));
            Layout after = SHORT.lay(rules.usableWidth(), all);
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
        Cutting metric = Cutting.of(quilt, CuttingRules.METRIC.seam(Length.inches(1, 4)).usableWidth(Length.inches(40)));
        for (int i = 0; i < inch.fabrics().size(); i++) {
            assertThat(metric.fabrics().get(i).areaSewn()).isEqualTo(inch.fabrics().get(i).areaSewn());
            assertThat(metric.fabrics().get(i).layout().length().ratioTo(inch.fabrics().get(i).layout().length())).isCloseTo(1, within(0.06));
        }
    }

    @Test
    void shrinkage_and_reserve_are_added_before_rounding_up() {
        CuttingRules rules = CuttingRules.INCH.shrinking(0.04);
        Blank a = Blank.of("A", Length.inches(40), Length.inches(24));
        Layout layout = LayoutSearch.QUICK.lay(rules.usableWidth(), List.of(a));
        Yardage yardage = Yardage.of(layout.length(), layout.bound(), rules);
        assertThat(yardage.shrunk()).isEqualTo(Length.inches(25));
        assertThat(yardage.toBuy()).isEqualTo(Length.inches("31 1/2"));
        assertThat(yardage.asked(rules)).isEqualTo("7/8 yd");
    }

    @Test
    void a_directed_print_keeps_its_direction() {
        Quilt quilt = GeneratedQuilt.of(new Random(9));
        Fabric first = quilt.patches().get(0).fabric();
        Cutting cutting = Cutting.of("t", quilt.top(), CuttingRules.INCH, List.of(first), LayoutSearch.USUAL);
        assertThat(cutting.fabrics().get(0).layout().spots()).noneMatch(s -> s.taken().turned());
    }
}
