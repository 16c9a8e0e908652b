package org.calicograph.turning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.calicograph.colour.Colour;
import org.calicograph.covering.DesignException;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paint;
import org.calicograph.drawing.Pen;
import org.calicograph.drawing.Picture;
import org.calicograph.patchwork.Assembly;
import org.calicograph.patchwork.Patch;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;

/**
 * Blocks as they were laid by hand, typed in from the table. Each is told by where its arrow points: {@code u} up, {@code r}
 * to the right, {@code d} down, {@code l} to the left; a capital letter for a block that is its mirror image, turned over.
 * What figures come of it is looked for across the edges of the blocks.
 *
 * @param block the block as drafted, its arrow up
 * @param rows  how each lies, row by row from above
 */
public record LaidOut(Patchwork block, List<List<Turn>> rows) implements Drawable {

    private static final String LETTERS = "urdl";
    private static final Colour SEAM = Colour.hex("#3b3a38");

    /** @throws DesignException if rows are not equally long, or there is none */
    public LaidOut {
        rows = rows.stream().map(List::copyOf).toList();
        if (rows.isEmpty() || rows.get(0).isEmpty()) {
            throw new DesignException("nothing is laid out; write a row such as \"u r u r\"");
        }
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).size() != rows.get(0).size()) {
                throw new DesignException("row " + (i + 1) + " has " + rows.get(i).size() + " blocks, and row 1 has " + rows.get(0).size() + "; write as many in each");
            }
        }
    }

    /**
     * Reads rows such as {@code "u r u r"}; blanks between letters may be left out.
     *
     * @throws DesignException naming the row and the letter that is not understood
     */
    public static LaidOut of(Patchwork block, String... rows) {
        List<List<Turn>> all = new ArrayList<>();
        for (String row : rows) {
            List<Turn> turns = new ArrayList<>();
            for (char letter : row.replaceAll("\\s", "").toCharArray()) {
                int quarters = LETTERS.indexOf(Character.toLowerCase(letter));
                if (quarters < 0) {
                    throw new DesignException("'" + letter + "' in row " + (all.size() + 1) + " tells no direction; write u, r, d or l for where the arrow points, a capital for a block turned over");
                }
                turns.add(new Turn(quarters, Character.isUpperCase(letter)));
            }
            all.add(turns);
        }
        return new LaidOut(block, all);
    }

    /** The top that was laid. */
    public Assembly top() {
        return Setting.straight(rows.get(0).size(), rows.size()).of((column, row) -> rows.get(row).get(column).of(block));
    }

    /** The figures that come of it, the best first. */
    public Emergence figures() {
        return Emergence.in(top());
    }

    /** The same layout as a unit to be repeated without end. */
    public Repeat repeat() {
        return new Repeat(rows.get(0).size(), rows.size(), rows.stream().flatMap(List::stream).toList(), Set.copyOf(BlockSymmetry.of(block)));
    }

    @Override
    public Exhibit show() {
        Assembly top = top();
        Emergence found = Emergence.in(top);
        int count = found.figures().size();
        List<Picture> patches = new ArrayList<>();
        for (Patch p : top.patches()) {
            patches.add(Picture.of(p.shape()).filled(Paint.of(p.fabric())).outlined(Pen.of(SEAM, 0.02)));
        }
        return Exhibit.several(Exhibit.of(Picture.group(patches), rows.get(0).size() + " x " + rows.size() + " blocks; "
                + (count == 0 ? "no figure comes of two patches or more" : count == 1 ? "one figure comes of them" : count + " figures come of them")), found.show());
    }
}
