package org.calicograph.fitting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import org.calicograph.fabric.Role;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.quilt.Quilt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BedCoverTest {

    /**
     * Mattress traders' tables of sizes (US, UK, AU), several of each, which agree on these.
     */
    @ParameterizedTest
    @CsvSource({"US,twin,39 in,75 in", "US,full,54 in,75 in", "US,queen,60 in,80 in", "US,king,76 in,80 in", "US,california king,72 in,84 in",
        "US,crib,28 in,52 in", "US,full xl,54 in,80 in", "US,three-quarter,48 in,75 in", "UK,single,90 cm,190 cm", "UK,double,135 cm,190 cm",
        "UK,king,150 cm,200 cm", "UK,super king,180 cm,200 cm", "EU,single,90 cm,200 cm", "EU,double,140 cm,200 cm", "EU,king,160 cm,200 cm",
        "AU,queen,153 cm,203 cm", "AU,single,92 cm,188 cm", "AU,king,183 cm,203 cm"})
    void mattresses_have_their_published_sizes(String region, String name, String width, String length) {
        Mattress mattress = Mattress.named(region, name);
        assertThat(mattress.width()).isEqualTo(Length.parse(width));
        assertThat(mattress.length()).isEqualTo(Length.parse(length));
    }

    /** A 12 in drop on both sides and at the foot: twin 63 x 87, full 78 x 87, king 100 x 92, california king 96 x 96 (quilt shop page, education slide deck). */
    @ParameterizedTest
    @CsvSource({"twin,63,87", "full,78,87", "king,100,92", "california king,96,96"})
    void a_twelve_inch_drop_gives_the_published_quilt(String name, int width, int length) {
        BedCover cover = BedCover.over(Mattress.named("US", name)).drop(inches(12)).takeUp(0);
        assertThat(cover.topWidth()).isEqualTo(inches(width));
        assertThat(cover.topLength()).isEqualTo(inches(length));
    }

    @Test
    void take_up_makes_the_top_larger_than_the_cover() {
        BedCover cover = BedCover.over(Mattress.QUEEN).drop(inches(12)).tuck(inches(10)).takeUp(0.04);
        assertThat(cover.width()).isEqualTo(inches(84));
        assertThat(cover.length()).isEqualTo(inches(102));
        assertThat(cover.topWidth().times(0.96).minus(inches(84)).abs().units()).isLessThan(3);
        Quilt small = Quilt.of("Small", Block.plain(Role.LIGHT.standIn(), inches(84), inches(102)));
        Quilt large = Quilt.of("Large", Block.plain(Role.LIGHT.standIn(), inches(88), inches(107)));
        assertThat(cover.isCoveredBy(small)).isFalse();
        assertThat(cover.verdict(small)).contains("make the top at least 87 1/2 in x 106 1/4 in");
        assertThat(cover.isCoveredBy(large)).isTrue();
    }

    @Test
    void an_unknown_mattress_is_refused_with_the_known_ones() {
        assertThatThrownBy(() -> Mattress.named("UK", "queen")).hasMessageContaining("single, small double, double, king");
    }

    /** Published comforter sizes: 12 in of drop on both sides and the foot (a quilt shop's page; an educational slide deck). */
    @Test
    void comforters_are_as_large_as_published() {
        assertEquals("63 in x 87 in", size(BedCover.comforter(Mattress.TWIN)));
        assertEquals("78 in x 87 in", size(BedCover.comforter(Mattress.FULL)));
        assertEquals("100 in x 92 in", size(BedCover.comforter(Mattress.KING)));
        assertEquals("96 in x 96 in", size(BedCover.comforter(Mattress.CALIFORNIA_KING)));
    }

    private static String size(BedCover cover) {
        return cover.width() + " x " + cover.length();
    }
}
