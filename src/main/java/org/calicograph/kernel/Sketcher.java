package org.calicograph.kernel;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.wire.PixelFrame;
import org.calicograph.wire.Painted;
import org.calicograph.wire.SharedPixels;
import org.calicograph.wire.ToKernel;

/**
 * Paints pictures for the editor's screen while a dial is being turned, so that only pixels go over and
 * not the values: plainly, as the editor itself would.
 */
final class Sketcher {

    /** What of an exhibit is said in words, and its pictures as they lie on the slate. */
    record Sketch(Exhibit rest, List<Painted> pictures) { }

    private Optional<SharedPixels> slate = Optional.empty();

    /** The sketch of an exhibit each of whose pictures has an easel; empty for any other. */
    Optional<Sketch> sketch(ToKernel.Turn turn, String cell, Exhibit exhibit) {
        List<Picture> pictures = new ArrayList<>();
        Exhibit rest = withoutPictures(exhibit, pictures);
        int[] easels = new int[pictures.size()];
        for (int part = 0; part < easels.length; part++) {
            easels[part] = easel(turn.easels(), cell, part);
            if (easels[part] < 0) {
                return Optional.empty();
            }
        }
        // A picture that is new to the exhibit has no frame yet; neither has an exhibit that has lost one.
        if (easels.length == 0 || easel(turn.easels(), cell, easels.length) >= 0) {
            return Optional.empty();
        }
        List<Painted> painted = new ArrayList<>();
        try {
            SharedPixels to = slate(Path.of(turn.slate()));
            for (int part = 0; part < easels.length; part++) {
                painted.add(paint(turn, easels[part], pictures.get(part), to));
            }
        } catch (IOException e) {
            return Optional.empty(); // The slate is gone or can't be opened; the pictures go over as values.
        }
        return Optional.of(new Sketch(rest, painted));
    }

    private static int easel(List<PixelFrame> easels, String cell, int part) {
        for (int i = 0; i < easels.size(); i++) {
            if (easels.get(i).cell().equals(cell) && easels.get(i).part() == part) {
                return i;
            }
        }
        return -1;
    }

    private static Exhibit withoutPictures(Exhibit exhibit, List<Picture> into) {
        if (exhibit instanceof Exhibit.Drawn drawn) {
            into.add(drawn.picture());
            return Exhibit.of(Picture.EMPTY, drawn.caption());
        }
        if (exhibit instanceof Exhibit.Several several) {
            return new Exhibit.Several(several.parts().stream().map(part -> withoutPictures(part, into)).toList());
        }
        return exhibit;
    }

    private SharedPixels slate(Path file) throws IOException {
        if (slate.isEmpty() || !slate.get().path().equals(file)) {
            slate = Optional.of(SharedPixels.at(file));
        }
        return slate.get();
    }

    private static Painted paint(ToKernel.Turn turn, int which, Picture picture, SharedPixels to) {
        PixelFrame easel = turn.easels().get(which);
        Box bounds = picture.bounds();
        int at = SharedPixels.at(turn.easels(), which);
        to.write(at, easel.paint(picture, bounds, false));
        return new Painted(easel.part(), at, easel.width(), easel.height(), bounds);
    }
}
