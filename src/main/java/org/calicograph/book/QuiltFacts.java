package org.calicograph.book;

import org.calicograph.cutting.Cutting;
import org.calicograph.cutting.FabricCut;
import org.calicograph.cutting.pieces.CuttingRules;
import org.calicograph.cutting.pieces.Piece;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Table;
import org.calicograph.finishing.Finishing;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.quilt.Quilt;
import org.calicograph.show.PatchworkPicture;

/** A quilt's numbers in one table, a fact a row, so that two quilts can be laid beside each other. */
public record QuiltFacts(Quilt quilt, CuttingRules rules) implements Drawable {

    /**
     * Of a quilt or of patchwork, by the usual rules.
     *
     * @throws IllegalArgumentException if the value is neither
     */
    public static QuiltFacts ofAny(Object value) {
        if (value instanceof Quilt quilt) {
            return new QuiltFacts(quilt, CuttingRules.usual());
        }
        if (value instanceof Patchwork work) {
            return new QuiltFacts(Quilt.of(work.name(), work), CuttingRules.usual());
        }
        throw new IllegalArgumentException("a quilt's numbers can't be told of " + (value == null ? "nothing" : value.getClass().getSimpleName()) + "; name a quilt");
    }

    /** The facts: sizes, patches, what is bought and cut of each cloth, finishing. */
    public Table table() {
        Table table = Table.of("'" + quilt.title() + "'", "What", "Amount").row("width", quilt.width().onRuler()).row("height", quilt.height().onRuler())
                .row("patches", String.valueOf(quilt.patches().size()));
        for (FabricCut cut : Cutting.of(quilt).by(rules).fabrics()) {
            table = table.row(cut.name() + ", to buy", cut.yardage().asked(rules)).row(cut.name() + ", pieces", String.valueOf(cut.pieces().stream().mapToInt(Piece::count).sum()))
                    .row(cut.name() + ", kinds of piece", String.valueOf(cut.pieces().size()));
        }
        Finishing finishing = Finishing.of(quilt, rules);
        return table.row("binding", finishing.edge().curved() ? finishing.biasSquares() + " of " + rules.text(finishing.biasSquare()) + " for bias" : finishing.bindingStrips() + " strips").row("backing", finishing.backing().widths() + " of " + rules.text(finishing.backing().each()));
    }

    @Override
    public Exhibit show() {
        return Exhibit.several(Exhibit.of(PatchworkPicture.of(quilt), quilt.toString()), Exhibit.of(table()));
    }
}
