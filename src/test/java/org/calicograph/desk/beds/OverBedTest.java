package org.calicograph.desk.beds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.calicograph.fabric.Fabric;
import org.calicograph.fitting.BedCover;
import org.calicograph.fitting.Mattress;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.quilt.Quilt;
import org.junit.jupiter.api.Test;

class OverBedTest {

    @Test
    void a_top_of_87_by_99_in_covers_a_queen() {
        // By hand: 87 x 0.97 = 84.39, less 60 is 24.39, half of it 12.195; 99 x 0.97 = 96.03, less 80 is 16.03. A king would have 4.2.
        assertThat(OverBed.sentence(new Box(0, 0, 87, 99), Length.System.INCH))
                .contains("Covers a queen bed (60 in x 80 in) once quilted: drop 12 1/4 in at the sides, 16 in at the foot");
    }

    @Test
    void beds_are_european_where_lengths_are_metric() {
        // 240 x 0.97 = 232.8, less 160 is 72.8, half of it 36.4; 260 x 0.97 = 252.2, less 200 is 52.2. 180 wide: 26.4 is more than 20.3.
        assertThat(OverBed.sentence(Length.cm(240), Length.cm(260), Length.System.METRIC))
                .contains("Covers a super king bed (180 cm x 200 cm) once quilted: drop 26 cm at the sides, 52 cm at the foot");
    }

    @Test
    void what_covers_no_bed_has_no_sentence() {
        assertThat(OverBed.sentence(Length.inches(36), Length.inches(36), Length.System.INCH)).isEmpty();
        assertThat(OverBed.sentence(Length.inches(200), Length.inches(60), Length.System.INCH)).isEmpty();
    }

    /** A second road: the bed's own cover, asked with the drop that the sentence tells, says the same of a real quilt, and no larger bed has the least drop. */
    @Test
    void the_cover_of_the_bed_found_agrees_and_no_larger_bed_is_covered() {
        Fabric navy = Fabric.of("navy", "#1f3a5f");
        for (int width = 40; width <= 120; width += 7) {
            for (int height = 60; height <= 130; height += 9) {
                Optional<OverBed.Fall> found = OverBed.largest(Length.inches(width), Length.inches(height), Length.System.INCH);
                Quilt quilt = Quilt.of("Slack Water", Block.plain(navy, Length.inches(width), Length.inches(height)));
                Length least = OverBed.LEAST_DROP;
                double area = found.map(f -> f.mattress().width().inInches() * f.mattress().length().inInches()).orElse(0.0);
                found.ifPresent(f -> assertThat(BedCover.over(f.mattress()).drop(least).isCoveredBy(quilt)).isTrue());
                for (Mattress m : Mattress.table()) {
                    if (m.region().equals("US") && m.width().inInches() * m.length().inInches() > area) {
                        assertThat(BedCover.over(m).drop(least).isCoveredBy(quilt)).as(m + " under " + width + " x " + height).isFalse();
                    }
                }
            }
        }
    }
}
