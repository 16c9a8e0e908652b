package org.calicograph.desk.results;

import java.nio.IntBuffer;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.util.Duration;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.session.Sketch;
import org.calicograph.wire.PixelFrame;

/**
 * A picture in a frame. The wheel with Ctrl, or + and -, steps nearer and back; dragging or the arrow keys move it;
 * 0 or a double click shows it whole again. The part under the pointer is told, and so is one that is pressed.
 * With the tape out, dragging measures; squinting leaves only light and dark.
 */
public final class PictureView extends Region {

    /** The paper that pictures lie on by day and by night. */
    private static final Colour PAPER = Colour.hex("#fffefb");
    private static final Colour DIM_PAPER = Colour.hex("#e4dfd4");
    /** How far a hand may stray, in pixels, and still press and not drag. */
    private static final double STILL = 3;
    private static final double TALLEST = 460;
    private static final double STEP = 40;
    /** The frame around the pixels, which shows who has the keyboard. */
    public static final double EDGE = 2;

    private final ImageView image = new ImageView();
    private final Painter painter = new Painter();
    private final PauseTransition settle = new PauseTransition(Duration.millis(160));
    private Picture picture;
    private Box box;
    private Optional<PartFinder> parts = Optional.empty();
    private Optional<View> chosen = Optional.empty();
    private Reach reach = new Reach(0, 0);
    private Consumer<String> onPoint = words -> { };
    private Consumer<Picture.Label> onPick = part -> { };
    private Function<Picture.Label, String> naming = Picture.Label::title;
    private Runnable onView = () -> { };
    private Runnable onTwice = this::whole;
    private final Tape measure = new Tape();
    private final Chalk chalk = new Chalk();
    /** True from the turn of a dial until what it makes has come. */
    private boolean awaited;
    private boolean tape;
    private double grabX;
    private double grabY;
    private boolean strayed;
    private long asked;
    private long shown;
    /** True while what is shown is painted from a picture that isn't here yet. */
    private boolean sketched;

    public PictureView(Picture picture, String caption) {
        this.picture = picture;
        this.box = picture.bounds();
        getStyleClass().add("picture");
        getChildren().addAll(image, chalk, measure);
        chalk.relocate(EDGE, EDGE);
        image.relocate(EDGE, EDGE);
        image.setManaged(false);
        image.setPreserveRatio(false);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        describe(caption);
        settle.setOnFinished(e -> paint(true));
        widthProperty().addListener((all, before, now) -> paint(true));
        heightProperty().addListener((all, before, now) -> paint(true));
        backgroundProperty().addListener((all, before, now) -> paint(true));
        addEventHandler(ScrollEvent.SCROLL, this::scrolled);
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        addEventHandler(MouseEvent.MOUSE_MOVED, this::pointed);
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> onPoint.accept(""));
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    private void describe(String caption) {
        setAccessibleText("Picture, " + size() + (caption.isBlank() ? "" : ": " + caption));
    }

    private String size() {
        return org.calicograph.measure.Length.inches(Math.rint(box.width() * 8) / 8) + " by "
                + org.calicograph.measure.Length.inches(Math.rint(box.height() * 8) / 8);
    }

    /** Told what is under the pointer; empty for nothing. */
    public void onPoint(Consumer<String> listener) {
        onPoint = listener;
    }

    /** What is said of a part under the pointer, and who is told of one that is pressed. */
    public void onParts(Function<Picture.Label, String> words, Consumer<Picture.Label> listener) {
        naming = words;
        onPick = listener;
    }

    /** Told whenever the picture lies otherwise in its frame. */
    public void onView(Runnable listener) {
        onView = listener;
    }

    /** What a double click does instead of showing the whole picture. */
    public void onTwice(Runnable deed) {
        onTwice = deed;
    }

    /** Takes the tape out, or puts it away: with it, dragging measures. */
    public void tape(boolean out) {
        tape = out;
        measure.clear();
        setCursor(out ? Cursor.CROSSHAIR : null);
    }

    /** Shows light and dark alone, as one sees them with eyes half shut. */
    public void squint(boolean on) {
        image.setEffect(on ? Squint.effect() : null);
    }

    /** A dial is turned: the edges of what hangs stay as chalk until {@link #rub}. */
    public void chalk() {
        awaited = true;
        if (chalk.isEmpty() && !sketched) {
            chalk.draw(picture, box);
        }
    }

    /** Rubs the chalk out; false if what a dial makes is not here yet and it stays. */
    public boolean rub(boolean slowly) {
        boolean here = !awaited && !sketched;
        if (here) {
            chalk.rub(slowly);
        }
        return here;
    }

    /** How many edges stand as chalk. */
    public int chalked() {
        return chalk.count();
    }

    /** Another picture in the same frame: plain at once, smoothed when no newer one follows; one that was sketched is smoothed at once. */
    public void show(Picture next, String caption) {
        boolean wasSketched = sketched;
        awaited = false;
        picture = next;
        sketched = false;
        parts = Optional.empty();
        frame(next.bounds(), caption);
        if (wasSketched) {
            paint(true);
        } else {
            quick();
        }
    }

    /** Pixels in the place of a picture that follows before long. */
    public void sketch(Sketch.Painting painting, String caption) {
        sketched = true;
        parts = Optional.empty();
        settle.stop();
        frame(painting.bounds(), caption);
        chalkAnew();
        put(painting.pixels(), painting.width(), painting.height(), ++asked);
    }

    private void frame(Box next, String caption) {
        boolean resized = !next.equals(box);
        box = next;
        describe(caption);
        if (resized) {
            requestLayout();
        }
    }

    /** This frame as a kernel has to know it to paint for it; empty while it has no size. */
    Optional<PixelFrame> easel(String cell, int part) {
        double density = density();
        int w = (int) Math.round(across() * density);
        int h = (int) Math.round(down() * density);
        Colour ground = Ground.of(this, PAPER);
        Colour paper = ground.value() > 50 ? PAPER : DIM_PAPER;
        return w < 2 || h < 2 ? Optional.empty() : Optional.of(new PixelFrame(cell, part, w, h, density, reach.isNone() ? chosen : Optional.of(view()), ground, paper));
    }

    private double across() {
        return getWidth() - 2 * EDGE;
    }

    private double down() {
        return getHeight() - 2 * EDGE;
    }

    private double density() {
        return getScene() != null && getScene().getWindow() != null ? getScene().getWindow().getRenderScaleX() : 1;
    }

    public Picture picture() {
        return picture;
    }

    /** The bounds of what is shown, in inches. */
    public Box box() {
        return box;
    }

    /** How large the picture is shown. */
    public double pixelsPerInch() {
        return view().scale();
    }

    /** How often the picture on the screen has been renewed. */
    public long paintings() {
        return shown;
    }

    @Override
    protected double computePrefHeight(double width) {
        double w = width > 0 ? width : 640;
        double natural = box.width() <= 0 ? 60 : w * box.height() / box.width();
        return Math.max(60, Math.min(TALLEST, natural + 24));
    }

    @Override
    protected double computePrefWidth(double height) {
        return 640;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 80;
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    /** How the picture lies in its frame. */
    public View view() {
        return chosen.orElseGet(() -> View.fitting(reach.of(box), across(), down()));
    }

    /** Shows the picture no larger than one of this size would be, in inches: pictures side by side are to one scale then. */
    public void toScaleOf(double width, double height) {
        if (!reach.equals(new Reach(width, height))) {
            reach = new Reach(width, height);
            paint(true);
        }
    }

    private void look(View next) {
        chosen = Optional.of(next);
        quick();
    }

    private void quick() {
        measure.clear();
        paint(false);
        settle.playFromStart();
    }

    private void paint(boolean smooth) {
        onView.run();
        chalkAnew();
        Optional<PixelFrame> easel = easel("", 0);
        if (sketched || easel.isEmpty()) {
            return;
        }
        PixelFrame to = easel.get();
        long number = ++asked;
        painter.paint(new Painter.Request(picture, box, to, smooth,
                pixels -> Platform.runLater(() -> put(pixels, to.width(), to.height(), number))));
    }

    /** The chalk lies on the same inches, however the picture lies. */
    private void chalkAnew() {
        if (!chalk.isEmpty()) {
            chalk.lay(view());
        }
    }

    private void put(int[] pixels, int width, int height, long number) {
        if (number > shown) {
            shown = number;
            PixelBuffer<IntBuffer> buffer = new PixelBuffer<>(width, height, IntBuffer.wrap(pixels), PixelFormat.getIntArgbPreInstance());
            image.setImage(new WritableImage(buffer));
            image.setFitWidth(across());
            image.setFitHeight(down());
        }
    }

    private void scrolled(ScrollEvent event) {
        if (event.isShortcutDown()) {
            look(view().zoomed(Math.pow(1.0025, event.getDeltaY()), event.getX() - EDGE, event.getY() - EDGE));
            event.consume();
        }
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        grabX = event.getX();
        grabY = event.getY();
        strayed = false;
        if (tape) {
            measure.clear();
        } else if (event.getClickCount() == 2) {
            strayed = true;
            onTwice.run();
        }
        // Whatever lies behind would take the keyboard.
        event.consume();
    }

    private void dragged(MouseEvent event) {
        strayed |= Math.hypot(event.getX() - grabX, event.getY() - grabY) > STILL;
        if (tape) {
            onPoint.accept(measure.stretch(grabX, grabY, event.getX(), event.getY(), view().scale()));
        } else if (strayed) {
            look(view().moved(event.getX() - grabX, event.getY() - grabY));
            grabX = event.getX();
            grabY = event.getY();
        }
        event.consume();
    }

    private void released(MouseEvent event) {
        if (!strayed && !tape && !sketched && event.isStillSincePress()) {
            part(event).ifPresent(onPick);
        }
        event.consume();
    }

    private void pointed(MouseEvent event) {
        if (!sketched && measure.isEmpty()) {
            onPoint.accept(part(event).map(naming).orElse(""));
        }
    }

    /** What lies under a point of this region, in inches of the picture. */
    Point inches(double x, double y) {
        return view().toInches(x - EDGE, y - EDGE);
    }

    private Optional<Picture.Label> part(MouseEvent event) {
        if (parts.isEmpty()) {
            parts = Optional.of(PartFinder.of(picture));
        }
        return parts.get().at(view().toInches(event.getX() - EDGE, event.getY() - EDGE));
    }

    /** A step nearer for a factor above 1, a step back for one below; the middle stays where it is. */
    public void step(double factor) {
        look(view().zoomed(factor, across() / 2, down() / 2));
    }

    /** The whole picture again. */
    public void whole() {
        chosen = Optional.empty();
        quick();
    }

    private void key(KeyEvent event) {
        if (event.isShortcutDown() || event.isAltDown()) {
            return;
        }
        switch (event.getCode()) {
            case PLUS, EQUALS, ADD -> step(1.25);
            case MINUS, SUBTRACT -> step(0.8);
            case LEFT -> look(view().moved(STEP, 0));
            case RIGHT -> look(view().moved(-STEP, 0));
            case UP -> look(view().moved(0, STEP));
            case DOWN -> look(view().moved(0, -STEP));
            case DIGIT0, NUMPAD0 -> whole();
            default -> {
                return;
            }
        }
        event.consume();
    }
}
