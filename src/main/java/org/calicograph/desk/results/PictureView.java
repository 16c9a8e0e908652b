package org.calicograph.desk.results;

import java.nio.IntBuffer;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.AccessibleRole;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.util.Duration;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.View;
import org.calicograph.colour.Colour;
import org.calicograph.geometry.Box;
import org.calicograph.geometry.Point;
import org.calicograph.session.Sketch;
import org.calicograph.wire.PixelFrame;

/**
 * A picture in a frame. The wheel with Ctrl, or + and -, zooms; dragging or the arrow keys pan; 0 or a
 * double click shows it whole again. The part under the pointer is told.
 */
public final class PictureView extends Region {

    /** The paper that pictures lie on by day, where it goes to the frame's edge, and by night. */
    private static final Colour PAPER = Colour.hex("#fffefb");
    private static final Colour DIM_PAPER = Colour.hex("#e4dfd4");
    private static final double TALLEST = 460;
    private static final double STEP = 40;
    /** The frame around the pixels, which shows who has the keyboard. */
    private static final double EDGE = 2;

    private final ImageView image = new ImageView();
    private final Painter painter = new Painter();
    private final PauseTransition settle = new PauseTransition(Duration.millis(160));
    private Picture picture;
    private Box box;
    private Optional<PartFinder> parts = Optional.empty();
    private Optional<View> chosen = Optional.empty();
    private Consumer<String> onPoint = words -> { };
    private double grabX;
    private double grabY;
    private long asked;
    private long shown;
    /** True while what is shown is painted from a picture that isn't here yet. */
    private boolean sketched;

    public PictureView(Picture picture, String caption) {
        this.picture = picture;
        this.box = picture.bounds();
        getStyleClass().add("picture");
        getChildren().add(image);
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

    /** Another picture in the same frame: plain at once, smoothed when no newer one follows; one that was sketched is smoothed at once. */
    public void show(Picture next, String caption) {
        boolean wasSketched = sketched;
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
        Colour ground = ground();
        Colour paper = ground.equals(PAPER) ? PAPER : DIM_PAPER;
        return w < 2 || h < 2 ? Optional.empty() : Optional.of(new PixelFrame(cell, part, w, h, density, chosen, ground, paper));
    }

    /** The colour that the style sheet gives the frame: that of paper by day, a dark one by night. */
    private Colour ground() {
        if (getBackground() != null && !getBackground().getFills().isEmpty() && getBackground().getFills().get(0).getFill() instanceof Color fill) {
            return Colour.packed(((int) Math.round(fill.getRed() * 255) << 16) | ((int) Math.round(fill.getGreen() * 255) << 8)
                    | (int) Math.round(fill.getBlue() * 255));
        }
        return PAPER;
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

    private View view() {
        return chosen.orElseGet(() -> View.fitting(box, across(), down()));
    }

    private void look(View next) {
        chosen = Optional.of(next);
        quick();
    }

    private void quick() {
        paint(false);
        settle.playFromStart();
    }

    private void paint(boolean smooth) {
        Optional<PixelFrame> easel = easel("", 0);
        if (sketched || easel.isEmpty()) {
            return;
        }
        PixelFrame to = easel.get();
        long number = ++asked;
        painter.paint(new Painter.Request(picture, box, to, smooth,
                pixels -> Platform.runLater(() -> put(pixels, to.width(), to.height(), number))));
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
        if (event.getClickCount() == 2) {
            whole();
        }
        // The column would take the keyboard.
        event.consume();
    }

    private void dragged(MouseEvent event) {
        look(view().moved(event.getX() - grabX, event.getY() - grabY));
        grabX = event.getX();
        grabY = event.getY();
        event.consume();
    }

    private void pointed(MouseEvent event) {
        if (sketched) {
            return;
        }
        if (parts.isEmpty()) {
            parts = Optional.of(PartFinder.of(picture));
        }
        Point p = view().toInches(event.getX() - EDGE, event.getY() - EDGE);
        onPoint.accept(parts.get().at(p).map(Picture.Label::title).orElse(""));
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
        double cx = across() / 2;
        double cy = down() / 2;
        switch (event.getCode()) {
            case PLUS, EQUALS, ADD -> look(view().zoomed(1.25, cx, cy));
            case MINUS, SUBTRACT -> look(view().zoomed(0.8, cx, cy));
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
