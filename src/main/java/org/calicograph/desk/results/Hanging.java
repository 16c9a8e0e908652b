package org.calicograph.desk.results;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.geometry.Insets;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;

/**
 * The pictures of one passage as they hang on the wall: side by side so that they are as large as the room lets
 * them be. Pressing one of several twice hangs it alone, and pressing it twice again brings the others back.
 */
public final class Hanging extends ExhibitPane {

    private static final double GAP = 14;
    private static final double MARGIN = 24;

    private final Function<Picture.Label, String> words;
    private final Consumer<Picture.Label> onPick;
    private Runnable onView = () -> { };
    private Optional<Node> alone = Optional.empty();
    private boolean tape;
    private boolean squint;

    /**
     * @param onPoint told what is under the pointer
     * @param words   what is said of a part under it
     * @param onPick  told of a part that is pressed
     */
    public Hanging(Consumer<String> onPoint, Function<Picture.Label, String> words, Consumer<Picture.Label> onPick) {
        super(onPoint, part -> part instanceof Exhibit.Drawn);
        this.words = words;
        this.onPick = onPick;
        getStyleClass().setAll("hanging");
    }

    /** Told when a picture lies otherwise in its frame. */
    public void onView(Runnable listener) {
        onView = listener;
    }

    @Override
    void made(Framed framed) {
        PictureView view = framed.view();
        view.onParts(words, onPick);
        view.onView(() -> onView.run());
        view.tape(tape);
        view.squint(squint);
        view.onTwice(() -> {
            if (frames().size() < 2) {
                view.whole();
            } else {
                alone = alone.isPresent() ? Optional.empty() : Optional.of(framed);
                requestLayout();
            }
        });
    }

    private List<Framed> frames() {
        return getChildren().stream().filter(n -> n instanceof Framed).map(n -> (Framed) n).toList();
    }

    /**
     * A part of what hangs.
     *
     * @param picture which of the pictures, from 0
     * @param place   a point of it, in inches of the picture
     */
    public record Under(int picture, Point place, String title) { }

    /** What lies under a point of the scene. */
    public Optional<Under> under(double sceneX, double sceneY) {
        List<Framed> all = frames();
        for (int i = 0; i < all.size(); i++) {
            PictureView view = all.get(i).view();
            Point2D at = view.sceneToLocal(sceneX, sceneY);
            if (all.get(i).isVisible() && view.contains(at)) {
                int picture = i;
                Point place = view.inches(at.getX(), at.getY());
                return PartFinder.titleAt(view.picture(), place).map(title -> new Under(picture, place, title));
            }
        }
        return Optional.empty();
    }

    /** The first part with such a title. */
    public Optional<Under> first(Predicate<String> wanted) {
        List<Framed> all = frames();
        for (int i = 0; i < all.size(); i++) {
            int picture = i;
            Optional<Under> found = PartFinder.within(all.get(i).view().picture(), wanted)
                    .flatMap(p -> PartFinder.titleAt(all.get(picture).view().picture(), p).map(title -> new Under(picture, p, title)));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** The picture that rulers can be laid along: the only one, or the one that hangs alone. */
    public Optional<PictureView> single() {
        List<Framed> all = frames();
        return alone.filter(all::contains).map(n -> ((Framed) n).view()).or(() -> all.size() == 1 ? Optional.of(all.get(0).view()) : Optional.empty());
    }

    /** The picture that keys and menus mean: the one with the keyboard, or the first. */
    public Optional<PictureView> meant() {
        return frames().stream().map(Framed::view).filter(Node::isFocused).findFirst().or(this::single).or(() -> frames().stream().findFirst().map(Framed::view));
    }

    /** A dial that moves what hangs is turned: its edges stay as chalk. */
    public void chalk() {
        frames().forEach(f -> f.view().chalk());
    }

    /** Rubs the chalk out; false if some of it has to stay still. */
    public boolean rub(boolean slowly) {
        boolean all = true;
        for (Framed f : frames()) {
            all &= f.view().rub(slowly);
        }
        return all;
    }

    public void tape(boolean out) {
        tape = out;
        frames().forEach(f -> f.view().tape(out));
    }

    public void squint(boolean on) {
        squint = on;
        frames().forEach(f -> f.view().squint(on));
    }

    @Override
    protected void layoutChildren() {
        List<Framed> all = frames();
        alone = alone.filter(all::contains);
        List<Framed> seen = alone.<List<Framed>>map(n -> List.of((Framed) n)).orElse(all);
        all.forEach(f -> f.setVisible(seen.contains(f)));
        Insets in = getInsets();
        double width = getWidth() - in.getLeft() - in.getRight();
        double height = getHeight() - in.getTop() - in.getBottom();
        if (seen.isEmpty() || width < 20 || height < 20) {
            return;
        }
        int across = columns(seen, width, height);
        int down = (seen.size() + across - 1) / across;
        double w = (width - GAP * (across - 1)) / across;
        double h = (height - GAP * (down - 1)) / down;
        for (int i = 0; i < seen.size(); i++) {
            int row = i / across;
            // A last row that isn't full stands in the middle.
            int inRow = Math.min(across, seen.size() - row * across);
            double left = in.getLeft() + (width - inRow * w - (inRow - 1) * GAP) / 2;
            seen.get(i).resizeRelocate(snapPositionX(left + (i % across) * (w + GAP)), snapPositionY(in.getTop() + row * (h + GAP)),
                    snapSizeX(w), snapSizeY(h));
        }
    }

    /** So many in a row that the pictures together cover the most of the room. */
    private static int columns(List<Framed> seen, double width, double height) {
        int best = 1;
        double most = -1;
        for (int across = 1; across <= seen.size(); across++) {
            int down = (seen.size() + across - 1) / across;
            double w = (width - GAP * (across - 1)) / across;
            double h = (height - GAP * (down - 1)) / down;
            double covered = 0;
            for (Framed f : seen) {
                Box box = f.view().picture().bounds();
                double scale = Math.min((w - MARGIN) / Math.max(1e-6, box.width()), (h - f.beneath(w) - MARGIN) / Math.max(1e-6, box.height()));
                covered += scale <= 0 ? 0 : scale * scale * box.width() * box.height();
            }
            if (covered > most) {
                most = covered;
                best = across;
            }
        }
        return best;
    }

    @Override
    protected double computePrefHeight(double width) {
        return 200;
    }

    @Override
    protected double computeMinHeight(double width) {
        return 40;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 40;
    }
}
