package org.calicograph.cutting;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.calicograph.cutting.layout.Blank;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.fabric.Fabric;
import org.calicograph.finishing.Finishing;
import org.calicograph.measure.Length;
import org.calicograph.quilt.Quilt;

/** The rectangles of what finishes a quilt, by the cloths that the quilt says. */
final class Finish {

    private Finish() { }

    static Map<Fabric, List<Blank>> blanks(Quilt quilt, CuttingRules rules) {
        Finishing finishing = Finishing.of(quilt, rules);
        Map<Fabric, List<Blank>> all = new LinkedHashMap<>();
        quilt.binding().ifPresent(cloth -> {
            if (finishing.edge().curved()) {
                add(all, cloth, "binding", finishing.biasSquares(), finishing.biasSquare(), finishing.biasSquare());
            } else {
                add(all, cloth, "binding", finishing.bindingStrips(), cloth.usableWidth(), finishing.how().strip());
            }
        });
        quilt.backing().ifPresent(cloth -> {
            Finishing.Backing back = finishing.backing();
            // A backing narrower than its cloth still takes the cloth's whole width for its length.
            add(all, cloth, "backing", back.widths(), cloth.usableWidth(), back.each());
            add(all, cloth, "sleeve", finishing.sleeveStrips(), cloth.usableWidth(), finishing.how().sleeve());
        });
        return all;
    }

    /** Strips and lengths lie across the whole cloth, so that none is turned. */
    private static void add(Map<Fabric, List<Blank>> all, Fabric cloth, String name, int count, Length across, Length along) {
        all.computeIfAbsent(cloth, f -> new ArrayList<>()).addAll(Collections.nCopies(count, new Blank(name, across, along, false)));
    }
}
