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
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.calicograph.desk.cells.Advice;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.cells.CodePane;
import org.calicograph.desk.cells.Column;
import org.calicograph.desk.cells.ProsePane;
import org.calicograph.desk.cells.CellRequests;
import org.calicograph.desk.lessons.LessonPage;
import org.calicograph.desk.opened.Change;
import org.calicograph.desk.opened.Outcomes;
import org.calicograph.desk.opened.Preferences;
import org.calicograph.desk.opened.OpenNotebook;
import org.calicograph.measure.Length;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.Saved;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionOptions;

/** The window: head, notices, the column of cells, the line at the foot; and how study, session and panes keep in step. */
final class DeskWindow implements CellRequests, Papers.Table {

    private final Stage stage;
    private final DeskOptions options;
    private final Preferences preferences;
    private final FindBar finding = new FindBar(this);
    private final RoutineMaking crafting = new RoutineMaking(this);
    private final NoticeBar notices = new NoticeBar();
    private final StatusLine status = new StatusLine();
    private final Column column = new Column(this, this::fill);
    private final SessionReports telling = new SessionReports(this, status);
    private final Worktable worktable = new Worktable(telling);
    private final Papers papers;
    private final FileChoice choosing;
    private final List<Action> actions;
    private final Header header;
    private final Scene scene;
    private final BorderPane root;
    private final Pages pages;
    private OpenNotebook study = new OpenNotebook(Notebook.titled(""));
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
        this.header = new Header(actions, t -> study.setTitle(t), this::drawAll, this::stop);
        this.root = new BorderPane(column, new VBox(header, notices, finding), null, status, null);
        root.getStyleClass().add("desk");
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        this.scene = new Scene(root, Math.min(1240, room.getWidth() - 40), Math.min(900, room.getHeight() - 40));
        lengths = preferences.lengths();
        Look.dress(scene, preferences.night());
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        stage.setTitle("Calicograph");
        stage.setScene(scene);
        stage.setMinWidth(720);
        stage.setMinHeight(480);
        stage.setOnCloseRequest(e -> {
            if (study.isUnsaved()) {
                e.consume();
                papers.leave(this::askWhere, stage::hide);
            }
        });
        stage.focusedProperty().addListener((all, before, now) -> papers.lookAtFile());
    }

    void show(Optional<Path> file) {
        if (file.isEmpty()) {
            papers.openFirst();
        } else if (!papers.open(file.get())) {
            papers.openNew();
            notices.say("file", file.get() + " can't be opened, so here is an empty study. Try calicograph check " + file.get() + " for the reason.");
        }
        stage.show();
    }

    void close() {
        papers.close();
        worktable.close();
        pages.leave(root.getCenter());
    }

    // --- The study ---

    @Override
    public void lay(OpenNotebook next, Notebook asRead, boolean trusted) {
        worktable.close();
        study = next;
        older = asRead.results();
        telling.forget();
        study.watch(this::changed);
        back();
        column.clear();
        header.title(study.notebook().title());
        column.show(study.notebook());
        status.noKernel();
        header.atWork(false);
        recent();
        choose();
        if (trusted) {
            begin();
        }
    }

    /** Fills a pane that has just been made. */
    private void fill(CellPane pane) {
        pane.showChosen(study.chosen().equals(Optional.of(pane.cellId())));
        if (pane instanceof CodePane code) {
            Optional.ofNullable(older.get(pane.cellId())).ifPresent(code::show);
            Optional.ofNullable(worktable.states().get(pane.cellId())).ifPresent(code::show);
            code.show(worktable.dials().stream().filter(d -> d.cell().equals(pane.cellId())).toList());
        }
    }

    @Override
    public void begin() {
        worktable.open(study.notebook(), sessionOptions());
        worktable.drawAll();
    }

    private void changed(Notebook before, Notebook after) {
        Change change = new Change(before, after);
        header.title(after.title());
        if (change.ofCells()) {
            column.show(after);
            if (change.ofOrder()) {
                worktable.arrange(after);
            } else {
                change.texts().forEach(worktable::edit);
            }
        }
        for (String name : change.dials()) {
            Optional.ofNullable(after.dials().get(name)).map(v -> v.text()).or(() -> telling.declared(name)).ifPresent(v -> turnNow(name, v));
        }
        choose();
    }

    private void turnNow(String name, String value) {
        try {
            worktable.setDial(name, value, column.easels());
        } catch (IllegalArgumentException e) {
            notices.say("dial", e.getMessage());
        }
    }

    void choose() {
        column.showChosen(study.chosen());
    }

    // --- What panes ask for ---

    @Override
    public void chosen(String id) {
        if (study.notebook().cell(id).isPresent()) {
            study.choose(id);
            choose();
        }
    }

    @Override
    public void edited(String id, String text) {
        study.setText(id, text);
    }

    @Override
    public void draw(String id) {
        if (column.pane(id).orElse(null) instanceof ProsePane prose) {
            prose.finish();
        } else if (mayDraw()) {
            worktable.draw(List.of(id));
        }
    }

    void drawAll() {
        if (mayDraw()) {
            worktable.drawAll();
        }
    }

    void drawStale() {
        if (mayDraw()) {
            worktable.drawStale();
        }
    }

    void drawFrom(String id) {
        if (mayDraw()) {
            List<String> ids = study.notebook().ids();
            List<String> codes = Change.codes(study.notebook());
            worktable.draw(ids.subList(ids.indexOf(id), ids.size()).stream().filter(codes::contains).toList());
        }
    }

    /** Drawing an untrusted study asks for trust instead. */
    boolean mayDraw() {
        if (!papers.isTrusted()) {
            papers.askTrust();
        }
        return papers.isTrusted();
    }

    void stop() {
        worktable.stop();
    }

    /** Shows a page in the place of the cells, or of another page. */
    void turnTo(Supplier<Node> page) {
        pages.leave(root.getCenter());
        root.setCenter(page.get());
        root.getCenter().requestFocus();
    }

    /** The cells again. */
    void back() {
        pages.leave(root.getCenter());
        root.setCenter(column);
        pane().ifPresent(Node::requestFocus);
    }

    /** The lesson that is gone through, if one is. */
    Optional<LessonPage> lesson() {
        return root.getCenter() instanceof LessonPage page ? Optional.of(page) : Optional.empty();
    }

    SessionOptions sessionOptions() {
        return papers.path().map(options.session()::beside).orElse(options.session()).withLengths(lengths);
    }

    void killKernel() {
        worktable.kill();
    }

    @Override
    public void turn(String dial, String value) {
        study.setDial(dial, value);
    }

    @Override
    public void pointedAt(String words) {
        status.pointedAt(words);
    }

    @Override
    public void addBehind(String id, boolean code) {
        int place = study.notebook().indexOf(id) + 1;
        write(code ? study.addCode(place) : study.addProse(place));
    }

    /** Goes to a cell and puts the keyboard there. */
    void write(String id) {
        choose();
        column.reveal(id);
        column.pane(id).ifPresent(CellPane::write);
    }

    @Override
    public Advice advice() {
        return worktable;
    }

    // --- Files ---

    @Override
    public Notebook withResults() {
        return Outcomes.in(study.notebook(), worktable.states(), worktable.needs(), worktable.dials(), older);
    }

    @Override
    public void savedAs(String words) {
        header.saved(words);
        stage.setTitle((study.notebook().title().isBlank() ? "Untitled study" : study.notebook().title()) + " \u2014 Calicograph");
    }

    @Override
    public void recent() {
        Map<String, Runnable> files = new LinkedHashMap<>();
        papers.recent().forEach((name, path) -> files.put(name, () -> papers.leave(this::askWhere, () -> papers.open(path))));
        header.recent(files);
    }

    Optional<Path> askWhere() {
        return choosing.where(study.notebook().title(), papers.path());
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
        if (event.getCode() == javafx.scene.input.KeyCode.ESCAPE && pending) {
            stop();
        }
    }

    void turnLook() {
        preferences.setNight(!preferences.night());
        Look.dress(scene, preferences.night());
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

    @Override
    public Length.System lengths() {
        return lengths;
    }

    Header header() {
        return header;
    }

    Worktable worktable() {
        return worktable;
    }

    OpenNotebook study() {
        return study;
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

    /** The chosen cell as a pane, if there is one. */
    Optional<CellPane> pane() {
        return study.chosen().flatMap(column::pane);
    }

    Optional<CodePane> code(String id) {
        return column.code(id);
    }
}
