package org.calicograph.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import org.calicograph.desk.cells.CellPane;
import org.calicograph.desk.cells.CodePane;
import org.calicograph.desk.cells.Column;
import org.calicograph.desk.cells.ProsePane;
import org.calicograph.desk.cells.Wishes;
import org.calicograph.desk.study.Outcomes;
import org.calicograph.desk.study.Preferences;
import org.calicograph.desk.study.Study;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.Saved;
import org.calicograph.session.CellState;
import org.calicograph.session.Completions;
import org.calicograph.session.KernelState;
import org.calicograph.wire.Dial;
import org.calicograph.wire.Signature;

/** The window: head, notices, the column of cells, the line at the foot; and how study, session and panes keep in step. */
final class DeskWindow implements Wishes, Worktable.Hearer, Papers.Table {

    private final Stage stage;
    private final DeskOptions options;
    private final Preferences preferences;
    private final Worktable worktable = new Worktable(this);
    private final NoticeBar notices = new NoticeBar();
    private final StatusLine status = new StatusLine();
    private final Column column = new Column(this);
    private final Papers papers;
    private final Choosing choosing;
    private final List<Action> actions;
    private final Header header;
    private final Scene scene;
    private final Map<String, String> declared = new HashMap<>();
    private Study study = new Study(Notebook.titled(""));
    private Map<String, Saved> older = Map.of();
    private boolean night;

    DeskWindow(Stage stage, DeskOptions options) {
        this.stage = stage;
        this.options = options;
        this.choosing = new Choosing(stage);
        this.preferences = new Preferences(options.own());
        this.papers = new Papers(this, notices, options);
        this.actions = new Deeds(this).all();
        this.header = new Header(actions, t -> study.setTitle(t), this::drawAll, this::stop);
        BorderPane root = new BorderPane(column, new VBox(header, notices), null, status, null);
        root.getStyleClass().add("desk");
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        this.scene = new Scene(root, Math.min(1240, room.getWidth() - 40), Math.min(900, room.getHeight() - 40));
        night = preferences.get("look", "day").equals("night");
        Look.dress(scene, night);
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
    }

    // --- The study ---

    @Override
    public void lay(Study next, Notebook asRead, boolean trusted) {
        worktable.close();
        study = next;
        older = asRead.results().isEmpty() ? older : asRead.results();
        declared.clear();
        study.watch(this::changed);
        column.clear();
        header.title(study.notebook().title());
        column.show(study.notebook());
        older.forEach((id, saved) -> column.code(id).ifPresent(p -> p.show(saved)));
        status.noKernel();
        header.atWork(false);
        recent();
        if (trusted) {
            worktable.open(study.notebook(), papers.path(), options.session());
            worktable.drawAll();
        }
        choose();
    }

    private void changed(Notebook before, Notebook after) {
        header.title(after.title());
        if (!before.cells().equals(after.cells())) {
            column.show(after);
            follow(before, after);
        }
        for (String name : union(before.dials().keySet(), after.dials().keySet())) {
            if (!Optional.ofNullable(before.dials().get(name)).equals(Optional.ofNullable(after.dials().get(name)))) {
                Optional<String> value = Optional.ofNullable(after.dials().get(name)).map(v -> v.text())
                        .or(() -> Optional.ofNullable(declared.get(name)));
                value.ifPresent(v -> turnNow(name, v));
            }
        }
        choose();
    }

    private static List<String> union(Iterable<String> first, Iterable<String> second) {
        List<String> all = new ArrayList<>();
        first.forEach(all::add);
        second.forEach(n -> {
            if (!all.contains(n)) {
                all.add(n);
            }
        });
        return all;
    }

    /** Tells the session what has become of the cells. */
    private void follow(Notebook before, Notebook after) {
        if (!codes(before).equals(codes(after))) {
            worktable.arrange(after);
            return;
        }
        for (Cell cell : after.cells()) {
            if (cell instanceof Cell.Code && !before.cell(cell.id()).map(Cell::text).equals(Optional.of(cell.text()))) {
                worktable.edit(cell.id(), cell.text());
            }
        }
    }

    private static List<String> codes(Notebook notebook) {
        return notebook.cells().stream().filter(c -> c instanceof Cell.Code).map(Cell::id).toList();
    }

    private void turnNow(String name, String value) {
        try {
            worktable.setDial(name, value);
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
            List<String> codes = codes(study.notebook());
            worktable.draw(ids.subList(ids.indexOf(id), ids.size()).stream().filter(codes::contains).toList());
        }
    }

    /** Drawing an untrusted study asks for trust instead. */
    private boolean mayDraw() {
        if (!papers.isTrusted()) {
            papers.askTrust();
        }
        return papers.isTrusted();
    }

    void stop() {
        worktable.stop();
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
    public CompletableFuture<Completions> complete(String id, String text, int offset) {
        return worktable.complete(id, text, offset);
    }

    @Override
    public CompletableFuture<List<Signature>> explain(String id, String text, int offset) {
        return worktable.explain(id, text, offset);
    }

    // --- What the session tells ---

    @Override
    public void stands(String cell, CellState state) {
        column.code(cell).ifPresent(p -> p.show(state));
        Map<String, CellState> states = worktable.states();
        status.progress(states.values());
        header.atWork(states.values().stream().anyMatch(CellState::pending));
    }

    @Override
    public void dials(List<Dial> dials) {
        Map<String, List<Dial>> byCell = new LinkedHashMap<>();
        dials.forEach(d -> {
            byCell.computeIfAbsent(d.cell(), c -> new ArrayList<>()).add(d);
            if (!study.notebook().dials().containsKey(d.name())) {
                declared.put(d.name(), d.text());
            }
        });
        column.codes().forEach(p -> p.show(byCell.getOrDefault(p.cellId(), List.of())));
    }

    @Override
    public void kernel(KernelState state) {
        status.kernel(state);
        if (state instanceof KernelState.Gone gone) {
            Map<String, Runnable> deeds = new LinkedHashMap<>();
            deeds.put("Start again", worktable::restart);
            notices.say("kernel", "The kernel, which does the drawing, has ended: " + gone.why()
                    + ". Nothing of what you wrote is lost, and what was drawn stays in sight.", deeds);
        } else if (state instanceof KernelState.Ready ready) {
            notices.hush("kernel");
            if (!ready.broken().isEmpty()) {
                var broken = ready.broken().get(0);
                notices.say("stdlib", "A routine in " + broken.file() + " can't be used, line " + broken.problem().from().line() + ": "
                        + broken.problem().message());
            } else {
                notices.hush("stdlib");
            }
        }
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
        recent();
    }

    private void recent() {
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
        night = !night;
        preferences.set("look", night ? "night" : "day");
        Look.dress(scene, night);
    }

    Study study() {
        return study;
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
