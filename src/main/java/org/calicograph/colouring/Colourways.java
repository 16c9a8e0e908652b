package org.calicograph.colouring;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drawing.Drawable;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.patchwork.Patchwork;

/**
 * One quilt in several colourings, side by side, each with its strip of values.
 *
 * @param work the quilt as it was drafted
 * @param ways in the order in which they are shown
 */
public record Colourways(Patchwork work, List<Way> ways) implements Drawable {

    private static final int COLUMNS = 4;
    private static final double WIDTH = 2.6;
    private static final double GAP = 0.4;

    /** A colouring and what it is called. */
    public record Way(String name, Colouring colouring) { }

    public Colourways {
        ways = List.copyOf(ways);
    }

    /** A quilt to be coloured in several ways. */
    public static Colourways of(Patchwork work) {
        return new Colourways(work, List.of());
    }

    /** One more colouring; a rule applies to the quilt as it was drafted. */
    public Colourways with(String name, Colouring colouring) {
        List<Way> more = new ArrayList<>(ways);
        more.add(new Way(name, colouring));
        return new Colourways(work, more);
    }

    /** The quilt in the colouring of that name. */
    public Patchwork way(String name) {
        return ways.stream().filter(w -> w.name().equals(name)).findFirst().map(w -> work.recoloured(w.colouring()))
                .orElseThrow(() -> new IllegalArgumentException("there is no colouring '" + name + "' of " + work.name()
                        + "; there are " + ways.stream().map(w -> "'" + w.name() + "'").toList()));
    }

    /** Four in a row: the name, the quilt, and its fabrics from light to dark with their greys beneath. */
    @Override
    public Exhibit show() {
        List<Picture> parts = new ArrayList<>();
        double height = WIDTH * work.height().inInches() / work.width().inInches();
        for (int i = 0; i < ways.size(); i++) {
            Patchwork top = work.recoloured(ways.get(i).colouring());
            double x = i % COLUMNS * (WIDTH + GAP);
            double y = i / COLUMNS * (height + 0.75 + GAP);
            parts.add(TopPicture.line(ways.get(i).name(), x, y, 0.15));
            parts.add(TopPicture.of(top, WIDTH).moved(x, y + 0.1));
            parts.add(ValueStudy.of(top).stripPicture(WIDTH, 0.36).moved(x, y + 0.2 + height));
        }
        return Exhibit.of(Picture.group(parts), work.name() + " in " + ways.size() + (ways.size() == 1 ? " colouring" : " colourings"));
    }
}
