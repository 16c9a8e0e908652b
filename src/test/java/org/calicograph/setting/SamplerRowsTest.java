package org.calicograph.setting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.calicograph.covering.DesignException;
import org.calicograph.fabric.Fabric;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.junit.jupiter.api.Test;

class SamplerRowsTest {

    private static final Fabric FOAM = Fabric.of("foam", "#c9d9d8");

    private static Block block(Length width, Length height) {
        return Block.plain(Fabric.of("navy", "#24425c"), width, height);
    }

    @Test
    void every_sampler_is_a_whole_rectangle_as_wide_as_its_longest_row_and_no_strip_is_too_narrow() {
        Random chance = new Random(6);
        int made = 0;
        for (int n = 0; n < 400; n++) {
            SamplerRows sampler = SamplerRows.coped(FOAM);
            int rows = 1 + chance.nextInt(4);
            Length widest = Length.ZERO;
            Length high = Length.ZERO;
            int blocks = 0;
            for (int r = 0; r < rows; r++) {
                Patchwork[] row = new Patchwork[1 + chance.nextInt(4)];
                Length wide = Length.ZERO;
                Length tall = Length.ZERO;
                for (int i = 0; i < row.length; i++) {
                    row[i] = block(Length.inches(4 + chance.nextInt(20), 2), Length.inches(4 + chance.nextInt(20), 2));
                    wide = wide.plus(row[i].width());
                    tall = Length.max(tall, row[i].height());
                }
                blocks += row.length;
                widest = Length.max(widest, wide);
                high = high.plus(tall);
                sampler = sampler.row(row);
            }
            // Halves of inches: nothing to fill is narrower than the least strip of half an inch.
            Assembly top = sampler.top();
            made++;
            assertEquals(widest, top.width());
            assertEquals(high, top.height());
            assertEquals(blocks, top.patches().stream().filter(p -> p.fabric().name().equals("navy")).count());
            for (Patch p : top.patches()) {
                assertTrue(Math.min(p.shape().bounds().width(), p.shape().bounds().height()) > 0.4999, p.shape().bounds().toString());
            }
        }
        assertEquals(400, made);
    }

    @Test
    void what_is_too_little_for_a_strip_is_named_with_both_repairs() {
        SamplerRows sampler = SamplerRows.coped(FOAM).row(block(Length.inches(6), Length.inches(6)), block(Length.inches(6), Length.inches("5 3/4")).named("Gull"));
        assertEquals("'Gull' is 1/4 in lower than the highest of its row, too little for a strip of 1/2 in; make it larger by that, or smaller by 1/4 in or more",
                assertThrows(DesignException.class, sampler::top).getMessage());
        assertTrue(assertThrows(DesignException.class, () -> SamplerRows.coped(FOAM).top()).getMessage().contains("no row"));
    }

    @Test
    void what_would_be_halved_too_narrow_goes_to_one_side() {
        Assembly top = SamplerRows.coped(FOAM).row(block(Length.inches(6), Length.inches(6)), block(Length.inches(6), Length.inches("5 1/4"))).top();
        assertEquals(1, top.patches().stream().filter(p -> p.fabric().equals(FOAM)).count());
    }
}
