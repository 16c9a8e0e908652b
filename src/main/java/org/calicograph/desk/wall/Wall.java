package org.calicograph.desk.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.util.Duration;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.results.Hanging;
import org.calicograph.desk.results.PictureView;
import org.calicograph.desk.results.Rulers;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.View;
import org.calicograph.geometry.Box;
import org.calicograph.measure.Length;
import org.calicograph.session.Sketch;
import org.calicograph.wire.Dial;
import org.calicograph.wire.PixelFrame;

/**
 * The design wall. What a passage drew hangs here, one passage's pictures at a time, as large as there is room;
 * which one is chosen by its pin, on the rail, or by writing in its passage. A picture from before the last change
 * is paler. Ruler edges lie along a picture that hangs alone.
 */
public final class Wall extends BorderPane {

    private static final PseudoClass OLDER = PseudoClass.getPseudoClass("older");

    /** What of a picture is of cloth, at least, if it is a quilt. */
    private static final double WHOLE = 0.9;
    /** The most of the wall that its bolts take. */
    private static final double BOLTS = 0.26;
    /** So many rests of a dial are waited for what it makes. */
    private static final int LONGEST = 40;

    /** The pictures of one passage. */
    private record Piece(Hanging hanging, boolean current) { }

    private final WallRequests asks;
    private final Map<String, Piece> pieces = new LinkedHashMap<>();
    private final StackPane board = new StackPane();
    private final Rulers rulers = new Rulers();
    private final Pane edges = new Pane(rulers);
    private final Label nail = new Label("Nothing hangs here yet.\nWhat a working line in the book draws will hang here.");
    private final Label number = new Label();
    private final Rail rail;
    private final Tray tray;
    private final Landing landing;
    private final Bolts bolts;
    private final Handles handles;
    /** How long a dial has to rest until the chalk is rubbed out. */
    private final PauseTransition rest = new PauseTransition(Duration.millis(700));
    private List<String> order = List.of();
    private List<Dial> dials = List.of();
    private Map<String, List<String>> needs = Map.of();
    private Optional<String> hung = Optional.empty();
    private boolean chosenByHand;
    private boolean tape;
    private boolean squint;
    private boolean still;
    private int rests;

    public Wall(WallRequests asks) {
        this.asks = asks;
        this.rail = new Rail(this::chooseByHand);
        this.landing = new Landing(board, this::hanging, asks);
        this.bolts = new Bolts(landing::dye, asks::cut);
        this.handles = new Handles(asks);
        this.tray = new Tray(asks::lengths, this::turn);
        rest.setOnFinished(e -> rub());
        getStyleClass().add("wall");
        setId("wall");
        board.getStyleClass().add("board");
        nail.getStyleClass().add("nail");
        nail.setWrapText(true);
        number.getStyleClass().addAll("pin-number", "hung-number");
        number.setId("hung-number");
        StackPane.setAlignment(number, Pos.TOP_LEFT);
        edges.setMouseTransparent(true);
        rulers.getStyleClass().add("rulers");
        HBox above = new HBox(rail, handles);
        above.getStyleClass().add("above-wall");
        above.setAlignment(Pos.CENTER_RIGHT);
        HBox.setHgrow(rail, Priority.ALWAYS);
        rail.setMinWidth(0);
        setTop(above);
        setCenter(board);
        setRight(bolts);
        setBottom(tray);
        setAccessibleText("The wall");
        // Large letters must not take the room that the quilt hangs in.
        bolts.setMinWidth(0);
        bolts.maxWidthProperty().bind(widthProperty().multiply(BOLTS));
        nail.textFillProperty().addListener((all, before, now) -> measure());
        nail.fontProperty().addListener((all, before, now) -> measure());
        edges.widthProperty().addListener((all, before, now) -> measure());
        edges.heightProperty().addListener((all, before, now) -> measure());
        refresh();
    }

    /** Takes everything down. */
    public void clear() {
        pieces.clear();
        order = List.of();
        dials = List.of();
        needs = Map.of();
        hung = Optional.empty();
        chosenByHand = false;
        rail.order(List.of());
        refresh();
    }

    /** The passages of the book, in their order; pictures of those that are gone are taken down. */
    public void order(List<String> cells) {
        order = cells;
        pieces.keySet().removeIf(cell -> !cells.contains(cell));
        rail.order(pinned());
        if (hung.isPresent() && !pieces.containsKey(hung.get())) {
            hung = Optional.empty();
            largest();
        }
        refresh();
    }

    private List<String> pinned() {
        return order.stream().filter(pieces::containsKey).toList();
    }

    /** The number of a passage's pin, if it has pictures. */
    public Optional<Integer> pin(String cell) {
        int at = pinned().indexOf(cell);
        return at < 0 ? Optional.empty() : Optional.of(at + 1);
    }

    /** Hangs what a passage came to; one without a picture hangs nothing. */
    public void hang(String cell, Exhibit exhibit, boolean current) {
        Optional<Picture> first = ExhibitPane.picture(exhibit);
        if (first.isEmpty()) {
            if (pieces.remove(cell) != null) {
                order(order);
            }
            return;
        }
        Piece piece = pieces.get(cell);
        boolean fresh = piece == null;
        Hanging hanging = fresh ? new Hanging(asks::pointedAt, part -> asks.words(cell, part), part -> picked(cell, part)) : piece.hanging;
        boolean other = fresh || !hanging.exhibit().equals(exhibit);
        hanging.tape(tape);
        hanging.squint(squint);
        hanging.onView(this::measure);
        hanging.show(exhibit);
        pieces.put(cell, new Piece(hanging, current));
        if (fresh) {
            rail.order(pinned());
        }
        if (other) {
            rail.picture(cell, first.get());
        }
        rail.current(cell, current);
        if (!chosenByHand) {
            largest();
        }
        if (fresh || hung.equals(Optional.of(cell))) {
            refresh();
        }
    }

    /** What hangs of a passage is from before the last change now, or is not. */
    public void current(String cell, boolean current) {
        Piece piece = pieces.get(cell);
        if (piece != null && piece.current != current) {
            pieces.put(cell, new Piece(piece.hanging, current));
            rail.current(cell, current);
            refresh();
        }
    }

    /** What is being drawn because of a dial, as it looks by now. */
    public void sketch(String cell, Sketch sketch) {
        Optional.ofNullable(pieces.get(cell)).ifPresent(p -> p.hanging.sketch(sketch));
        if (hung.equals(Optional.of(cell))) {
            measure();
        }
    }

    /** Until somebody chooses, the largest thing hangs: the quilt. */
    private void largest() {
        Optional<String> most = pinned().stream().max(Comparator.comparingDouble(cell -> extent(pieces.get(cell).hanging)));
        if (!most.equals(hung)) {
            hung = most;
            refresh();
        }
    }

    private static double extent(Hanging hanging) {
        return ExhibitPane.picture(hanging.exhibit()).map(p -> p.bounds().width() * p.bounds().height()).orElse(0.0);
    }

    private void chooseByHand(String cell) {
        choose(cell);
        asks.hung(cell);
    }

    /** Hangs what this passage drew, if it drew a picture. */
    public void choose(String cell) {
        if (pieces.containsKey(cell)) {
            chosenByHand = true;
            if (!hung.equals(Optional.of(cell))) {
                hung = Optional.of(cell);
                refresh();
            }
        }
    }

    private void picked(String cell, Picture.Label part) {
        bolts.ring(ClothShare.named(part.title()));
        asks.picked(cell, part);
    }

    /** The passage whose pictures hang. */
    public Optional<String> hung() {
        return hung;
    }

    public Optional<Hanging> hanging() {
        return hung.map(pieces::get).map(Piece::hanging);
    }

    /** Pictures of the passage, whether they hang or stand on the rail. */
    public Exhibit exhibit(String cell) {
        return Optional.ofNullable(pieces.get(cell)).map(p -> p.hanging.exhibit()).orElse(Exhibit.NOTHING);
    }

    /** The picture that keys and menus mean. */
    public Optional<PictureView> meant() {
        return hanging().flatMap(Hanging::meant);
    }

    /** How large what hangs is, if it hangs alone and is pieced all over, as a quilt is. */
    public Optional<Box> cover() {
        return hanging().flatMap(Hanging::single).filter(v -> bolts.area() > 0 && bolts.area() >= WHOLE * v.box().width() * v.box().height()).map(PictureView::box);
    }

    /** The dials of the book, and for each passage those that it needs. */
    public void dials(List<Dial> now, Map<String, List<String>> needed) {
        dials = now;
        needs = needed;
        handles.metric(asks.lengths() == Length.System.METRIC);
        tray.show(dials, moving());
    }

    /** The passages that what hangs depends on, itself among them. */
    private Set<String> moving() {
        Set<String> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(hung.stream().toList());
        while (!open.isEmpty()) {
            String cell = open.remove(open.size() - 1);
            if (found.add(cell)) {
                open.addAll(needs.getOrDefault(cell, List.of()));
            }
        }
        return found;
    }

    private void turn(String dial, String value) {
        Set<String> cells = moving();
        if (dials.stream().anyMatch(d -> d.name().equals(dial) && cells.contains(d.cell()))) {
            hanging().ifPresent(Hanging::chalk);
            rests = 0;
            rest.playFromStart();
        }
        asks.turn(dial, value);
    }

    /** What is drawn for long is waited for, up to some seconds: a dial may change nothing at all. */
    private void rub() {
        boolean done = hanging().map(h -> h.rub(!still)).orElse(true);
        if (!done && rests++ < LONGEST) {
            rest.playFromStart();
        }
    }

    /** Whether the book's last change can be taken back, and whether one that was can be made again. */
    public void changes(boolean back, boolean on) {
        handles.change(back, on);
    }

    /** Nothing on the wall moves by itself, or it may again. */
    public void still(boolean on) {
        still = on;
    }

    /** The frames of what hangs, for pixels that are painted elsewhere. */
    public List<PixelFrame> easels() {
        return hung.map(cell -> pieces.get(cell).hanging.easels(cell)).orElse(List.of());
    }

    /** Takes the tape out or puts it away; true if it is out now. */
    public boolean turnTape() {
        tape = !tape;
        handles.tape(tape);
        pieces.values().forEach(p -> p.hanging.tape(tape));
        return tape;
    }

    /** Squints, or looks again; true if one squints now. */
    public boolean turnSquint() {
        squint = !squint;
        handles.squint(squint);
        pieces.values().forEach(p -> p.hanging.squint(squint));
        return squint;
    }

    private void refresh() {
        rail.hung(hung);
        tray.show(dials, moving());
        Optional<Piece> piece = hung.map(pieces::get);
        if (piece.isEmpty()) {
            nail.setVisible(true);
            board.getChildren().setAll(nail);
            bolts.show(List.of(), Map.of());
            return;
        }
        Hanging hanging = piece.get().hanging;
        hanging.pseudoClassStateChanged(OLDER, !piece.get().current);
        number.setText(pin(hung.get()).map(String::valueOf).orElse(""));
        number.setAccessibleText("Pin " + number.getText() + (piece.get().current ? "" : ", from before the last change"));
        number.pseudoClassStateChanged(OLDER, !piece.get().current);
        if (!board.getChildren().equals(List.of(nail, hanging, edges, number))) {
            // The nail lends the rulers its ink.
            nail.setVisible(false);
            board.getChildren().setAll(nail, hanging, edges, number);
        }
        List<Picture> pictures = new ArrayList<>();
        ExhibitPane.flat(hanging.exhibit()).forEach(part -> {
            if (part instanceof Exhibit.Drawn drawn) {
                pictures.add(drawn.picture());
            }
        });
        // Several pictures of one passage show the same cloths again and again.
        bolts.show(pictures.size() == 1 ? pictures : List.of(), asks.cloths());
        measure();
    }

    private void measure() {
        rulers.resize(edges.getWidth(), edges.getHeight());
        Optional<PictureView> single = hanging().flatMap(Hanging::single);
        Optional<View> lying = single.filter(v -> v.getWidth() > 0).map(v -> {
            javafx.geometry.Point2D corner = edges.sceneToLocal(v.localToScene(0, 0));
            return v.view().moved(corner.getX() + PictureView.EDGE, corner.getY() + PictureView.EDGE);
        });
        // The nail has letters of 15 where those of the edges have 10.
        rulers.ink(nail.getTextFill() instanceof Color ink ? ink : Color.GRAY, Math.min(15, nail.getFont().getSize() * 2 / 3));
        boolean metric = asks.lengths() == Length.System.METRIC;
        rulers.along(lying, single.map(PictureView::box).orElse(new Box(0, 0, 1, 1)), metric ? Length.cm(1) : Length.inches(1));
    }
}
