package org.calicograph.course;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.fabric.Role;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.junit.jupiter.api.Test;

class PaperBlocksTest {

    private static final Block BLOCK = Block.onGrid("half", 1, Length.inches(9)).halvesRising(0, 0, 1, Role.DARK, Role.LIGHT).block();

    @Test
    void every_page_is_as_large_as_the_paper_and_holds_whole_blocks() {
        for (Paper paper : new Paper[] {Paper.A4, Paper.LETTER}) {
            for (String side : new String[] {"1 1/2", "2", "3", "6"}) {
                PaperBlocks blocks = PaperBlocks.of(BLOCK).wide(Length.inches(side)).copies(30).on(paper);
                for (Picture page : blocks.pages().pages()) {
                    Box box = page.bounds();
                    assertEquals(paper.width().inInches(), box.width(), 1e-6);
                    assertEquals(paper.height().inInches(), box.height(), 1e-6);
                }
            }
        }
        // 7 in of a page 8 1/2 in wide and 9 in of one 11 in high hold three by four of 2 in: common arithmetic.
        assertEquals(2, PaperBlocks.of(BLOCK).copies(24).on(Paper.LETTER).pages().pages().size());
    }

    @Test
    void a_block_larger_than_the_page_and_no_block_are_refused() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> PaperBlocks.of(BLOCK).wide(Length.inches(9))).getMessage().contains("use a width up to"));
        assertThrows(IllegalArgumentException.class, () -> PaperBlocks.of(BLOCK).copies(0));
    }
}
