package org.calicograph.desk;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.calicograph.desk.beds.OverBed;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.cells.CodePane;
import org.calicograph.desk.cells.Column;
import org.calicograph.desk.lessons.LessonPage;
import org.calicograph.desk.opened.Change;
import org.calicograph.desk.opened.Outcomes;
import org.calicograph.desk.opened.Preferences;
import org.calicograph.desk.opened.OpenNotebook;
import org.calicograph.desk.wall.Wall;
import org.calicograph.measure.Length;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.Saved;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionOptions;

/** The window: the top band, notices, book and wall, the line at the foot; and how notebook, session and panes keep in step. */
final class DeskWindow implements Papers.Table {

    private final Stage stage;
    private final DeskOptions options;
    private final Preferences preferences;
    private final FindBar finding = new FindBar(this);
    private final RoutineMaking crafting = new RoutineMaking(this);
    private final NoticeBar notices = new NoticeBar();
    private final StatusLine status = new StatusLine();
    private final Passages passages = new Passages(this);
    private final Column column = new Column(passages, this::fill);
    private final Wall wall = new Wall(new Hands(this));
    private final BookAndWall open;
    private final SessionReports telling = new SessionReports(this);
    private final Worktable worktable = new Worktable(telling);
    private final Drawing drawing = new Drawing(this, worktable);
    private final Papers papers;
    private final FileChoice choosing;
    private final List<Action> actions;
    private final Header header;
    private final Scene scene;
    private final Pages pages;
    private final Printing printing;
    private final Dressing dressing;
    private OpenNotebook opened = new OpenNotebook(Notebook.titled(""));
    private Map<String, Saved> older = Map.of();
    private Length.System lengths;

    DeskWindow(Stage stage, DeskOptions options) {
        this.stage = stage;
        this.options = options;
        this.choosing = new FileChoice(stage);
        this.preferences = new Preferences(options.own());
        this.papers = new Papers(this, notices, options);
        this.pages = new Pages(this, worktable);
        this.actions = new MenuActions(this).all();
        this.printing = new Printing(this, notices);
        this.header = new Header(actions, t -> opened.setTitle(t), drawing::hold);
        VBox left = new VBox(finding, column);
        VBox.setVgrow(column, javafx.scene.layout.Priority.ALWAYS);
        this.open = new BookAndWall(left, wall, pages::leave);
        BorderPane root = new BorderPane(open, new VBox(header, notices), null, status, null);
        root.getStyleClass().add("desk");
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        this.scene = new Scene(root, Math.min(1440, room.getWidth() - 40), Math.min(900, room.getHeight() - 40));
        lengths = preferences.lengths();
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        this.dressing = new Dressing(this, scene, preferences);
        stage.setTitle("Calicograph");
        stage.setScene(scene);
        stage.setMinWidth(720);
        stage.setMinHeight(480);
        stage.setOnCloseRequest(e -> {
            if (opened.isUnsaved()) {
                e.consume();
                askClose();
            }
        });
        stage.focusedProperty().addListener((all, before, now) -> papers.lookAtFile());
    }

    void show(Optional<Path> file) {
        if (file.isEmpty() && papers.recents().isEmpty()) {
            papers.openFirst();
        } else if (file.isEmpty()) {
            papers.openStart();
            pages.start();
        } else if (!papers.open(file.get())) {
            papers.openNew();
            notices.say("file", file.get() + " can't be opened, so here is an empty notebook. Try calicograph check " + file.get() + " for the reason.");
        }
        stage.show();
    }

    void close() {
        papers.close();
        worktable.close();
        open.clear();
    }

    void askClose() {
        papers.leave(this::askWhere, stage::hide);
    }

    // --- The notebook ---

    @Override
    public void lay(OpenNotebook next, Notebook asRead, boolean trusted) {
        worktable.close();
        opened = next;
        older = asRead.results();
        telling.forget();
        opened.watch(this::changed);
        back();
        column.clear();
        wall.clear();
        drawing.settling().forget();
        header.title(opened.notebook().title());
        column.show(opened.notebook());
        wall.order(opened.notebook().ids());
        column.makeAll(older.keySet());
        number();
        status.nothing();
        header.atWork(0);
        recent();
        choose();
        if (trusted) {
            begin();
        }
    }

    /** Fills a pane that has just been made. */
    private void fill(CellPane pane) {
        pane.showChosen(opened.chosen().equals(Optional.of(pane.cellId())));
        if (pane instanceof CodePane code) {
            Optional.ofNullable(older.get(pane.cellId())).ifPresent(code::show);
            Optional.ofNullable(worktable.states().get(pane.cellId())).ifPresent(code::show);
            code.number(wall.pin(pane.cellId()));
        }
    }

    @Override
    public void begin() {
        worktable.open(opened.notebook(), sessionOptions());
        worktable.drawAll();
    }

    @Override
    public void halt() {
        worktable.close();
        status.nothing();
        header.atWork(0);
    }

    private void changed(Notebook before, Notebook after) {
        Change change = new Change(before, after);
        header.title(after.title());
        if (change.ofCells()) {
            column.show(after);
            if (change.ofOrder()) {
                wall.order(after.ids());
                number();
                worktable.arrange(after);
                drawing.settling().arranged();
            } else {
                change.texts().forEach((id, text) -> {
                    worktable.edit(id, text);
                    drawing.settling().written(id);
                });
            }
        }
        for (String name : change.dials()) {
            Optional.ofNullable(after.dials().get(name)).map(v -> v.text()).or(() -> telling.declared(name)).ifPresent(v -> turnNow(name, v));
        }
        choose();
    }

    private void turnNow(String name, String value) {
        try {
            worktable.setDial(name, value, wall.easels());
        } catch (IllegalArgumentException e) {
            notices.say("dial", e.getMessage());
        }
    }

    void choose() {
        column.showChosen(opened.chosen());
        wall.changes(opened.canUndo(), opened.canRedo());
    }

    /** Something else hangs, or what hangs looks otherwise: says in the top band how large it is. */
    void hangs() {
        header.sentence(wall.meant().map(v -> sentence(v.box())).orElse(""));
        status.rests(wall.cover().flatMap(b -> OverBed.sentence(b, lengths)).orElse(""));
    }

    private String sentence(org.calicograph.geometry.Box box) {
        if (lengths == Length.System.METRIC) {
            return Math.round(box.width() * 2.54) + " x " + Math.round(box.height() * 2.54) + " cm";
        }
        return Length.inches(Math.rint(box.width() * 8) / 8).toString().replace(" in", "") + " x " + Length.inches(Math.rint(box.height() * 8) / 8);
    }

    FileChoice files() {
        return choosing;
    }

    /** The numbers of the pins are others now. */
    void number() {
        column.codes().forEach(p -> p.number(wall.pin(p.cellId())));
    }

    // --- Book and wall ---

    /** Book and wall again, and the keyboard in the book. */
    void back() {
        open.clear();
        pane().ifPresent(CellPane::focus);
    }

    /** The lesson that is gone through, if one is. */
    Optional<LessonPage> lesson() {
        return open.page() instanceof LessonPage page ? Optional.of(page) : Optional.empty();
    }

    SessionOptions sessionOptions() {
        return papers.path().map(options.session()::beside).orElse(options.session()).withLengths(lengths);
    }

    void killKernel() {
        worktable.kill();
    }

    /** Goes to a passage and puts the keyboard there. */
    void write(String id) {
        choose();
        column.reveal(id);
        column.pane(id).ifPresent(CellPane::write);
    }

    // --- Files ---

    @Override
    public Notebook withResults() {
        return Outcomes.in(opened.notebook(), worktable.states(), worktable.needs(), worktable.dials(), older);
    }

    @Override
    public void savedAs(String words) {
        header.saved(words);
        stage.setTitle((opened.notebook().title().isBlank() ? "A notebook without a name" : opened.notebook().title()) + " \u2014 Calicograph");
    }

    @Override
    public void recent() {
        Map<String, Runnable> files = new LinkedHashMap<>();
        papers.recent().forEach((name, path) -> files.put(name, () -> papers.leave(this::askWhere, () -> papers.open(path))));
        header.recent(files);
    }

    Optional<Path> askWhere() {
        return choosing.where(opened.notebook().title(), papers.path());
    }

    void askOpen() {
        choosing.which(papers.path()).ifPresent(path -> papers.leave(this::askWhere, () -> papers.open(path)));
    }

    // --- Keys and look ---

    private void pressed(KeyEvent event) {
        for (Action action : actions) {
            if (action.keys().isPresent() && action.keys().get().match(event)) {
                event.consume();
                action.deed().run();
                return;
            }
        }
        boolean pending = worktable.states().values().stream().anyMatch(CellState::pending);
        if (event.getCode() == KeyCode.ESCAPE && pending) {
            drawing.hold();
        } else if (event.getCode() == KeyCode.ESCAPE && open.isAlone()) {
            open.turnAlone();
        }
    }

    Dressing dressing() {
        return dressing;
    }

    /** The book with new panes, as when letters have another size. */
    void layAnew() {
        column.clear();
        column.show(opened.notebook());
        column.makeAll(opened.notebook().ids());
        number();
        choose();
    }

    /** Writes lengths in inches instead of metric, or the other way round; no value changes. */
    void turnLengths() {
        lengths = lengths == Length.System.INCH ? Length.System.METRIC : Length.System.INCH;
        preferences.setLengths(lengths);
        telling.dials(worktable.dials());
        if (worktable.isOpen()) {
            begin();
        }
    }

    Length.System lengths() {
        return lengths;
    }

    Header header() {
        return header;
    }

    Wall wall() {
        return wall;
    }

    StatusLine status() {
        return status;
    }

    Passages passages() {
        return passages;
    }

    Drawing drawing() {
        return drawing;
    }

    BookAndWall open() {
        return open;
    }

    Printing printing() {
        return printing;
    }

    Worktable worktable() {
        return worktable;
    }

    OpenNotebook opened() {
        return opened;
    }

    FindBar finding() {
        return finding;
    }

    RoutineMaking crafting() {
        return crafting;
    }

    Pages pages() {
        return pages;
    }

    Papers papers() {
        return papers;
    }

    Column column() {
        return column;
    }

    NoticeBar notices() {
        return notices;
    }

    List<Action> actions() {
        return actions;
    }

    /** The chosen passage as a pane, if there is one. */
    Optional<CellPane> pane() {
        return opened.chosen().flatMap(column::pane);
    }

    Optional<CodePane> code(String id) {
        return column.code(id);
    }
}
