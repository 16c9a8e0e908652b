package org.calicograph.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.calicograph.measure.Length.inches;

import org.calicograph.border.Fitting;
import org.calicograph.measure.Length;
import org.calicograph.covering.DesignException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BorderStripsTest {

    /**
     * Mitred strips: length + 2 x border + extra. 40 in with 5 in and 6 in extra (a quilt magazine's pattern); 22 1/2 in with 3 1/2 in and 6 in extra (a quilting directory's article on mitred borders); 72 in with 5 in and 2 in extra
     * (a quilt shop's page, whose own sum is 84); 60 in with 7 in and 1 in extra (a forum's answer, X + 2Y + 1).
     */
    @ParameterizedTest
    @CsvSource({"40,5,6,56", "22 1/2,3 1/2,6,35 1/2", "72,5,2,84", "60,7,1,75"})
    void mitred_strips_have_their_published_lengths(String side, String width, int extra, String strip) {
        BorderStrips strips = BorderStrips.mitred(Length.parse(side), Length.parse(side), Length.parse(width)).extra(inches(extra));
        assertThat(strips.ends()).isEqualTo(Length.parse(strip));
        assertThat(strips.sides()).isEqualTo(Length.parse(strip));
    }

    /**
     * A 70 x 86 in quilt with a border cut 6 1/2 in takes strips of 338 in in all and comes to 82 x 98 in (education slide
     * deck on working out yardage: 2w + 2l + 4b).
     */
    @Test
    void butted_strips_have_their_published_length_in_all() {
        BorderStrips strips = BorderStrips.butted(inches(70), inches(86), inches(6));
        assertThat(strips.cutWidth()).isEqualTo(inches("6 1/2"));
        assertThat(strips.total()).isEqualTo(inches(338));
        assertThat(strips.fullAcross()).isEqualTo(inches(82));
        assertThat(strips.fullDown()).isEqualTo(inches(98));
    }

    /** Three measures of 27 1/4, 27 1/4 and 27 1/8 in average 27.2083 in, cut as 27 1/4 in (a quilt blog, 2014). */
    @Test
    void a_top_is_measured_as_published() {
        assertThat(BorderStrips.measured(inches("27 1/4"), inches("27 1/4"), inches("27 1/8"))).isEqualTo(inches("27 1/4"));
        assertThatThrownBy(BorderStrips::measured).isInstanceOf(DesignException.class).hasMessageContaining("measure both edges and the middle");
    }

    /** A 50 in top inside a pieced border of 53 in wants 3 in more in all, strips of 1 1/2 in finished and 2 in cut (a quilting club's forum). */
    @Test
    void a_spacer_makes_up_the_published_difference() {
        Fitting fitting = Fit.around(inches(50), inches(50)).units(inches(53)).equalSpacers(inches(1, 2), inches(3)).corners(Fitting.Corners.APART).nearest();
        assertThat(fitting.across()).isEqualTo(1);
        assertThat(fitting.spacerSides()).isEqualTo(inches("1 1/2"));
        assertThat(BorderStrips.butted(inches(50), inches(50), fitting.spacerSides()).cutWidth()).isEqualTo(inches(2));
    }
}
