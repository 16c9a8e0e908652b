package org.calicograph.book;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.book.page.PageFlow;
import org.calicograph.patchwork.Block;
import org.calicograph.piecing.SewingPlan;
import org.calicograph.piecing.Stage;
import org.calicograph.show.PatchworkPicture;

/** The first page: the quilt large, its name, its size, its blocks, how hard it is and why. */
record Cover(Booklet booklet, SewingPlan plan, Difficulty difficulty) {

    private static final int MOST_NAMES = 6;

    void set(PageFlow flow) {
        flow.space(0.35);
        flow.centred(booklet.quilt().title(), 0.55, true);
        flow.space(0.12);
        flow.centred(booklet.size() + " finished", 0.19, false);
        flow.space(0.35);
        flow.picture(Described.quilt(booklet.quilt(), booklet.size(), PatchworkPicture.of(booklet.quilt())), flow.room() - 1.75, "");
        flow.space(0.05);
        flow.centred(blocks(), 0.16, false);
        flow.space(0.06);
        flow.centred(difficulty.level() + ": " + difficulty.reason() + ".", 0.15, false);
        flow.space(0.02);
        flow.centred("Before this one: " + difficulty.before() + ".", 0.15, false);
    }

    private String blocks() {
        List<String> named = new ArrayList<>();
        for (Stage s : plan.stages()) {
            if (s.work() instanceof Block) {
                named.add(s.count() + " " + s.name());
            }
        }
        String patches = booklet.quilt().top().patchCount() + " patches";
        if (named.isEmpty()) {
            return patches;
        }
        List<String> told = named.size() <= MOST_NAMES ? named : named.subList(0, MOST_NAMES);
        return "Blocks: " + String.join(", ", told) + (named.size() > MOST_NAMES ? " and " + (named.size() - MOST_NAMES) + " more" : "") + "; " + patches;
    }
}
