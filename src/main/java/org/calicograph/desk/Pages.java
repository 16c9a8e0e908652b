package org.calicograph.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import org.calicograph.desk.cuts.CutListPage;
import org.calicograph.desk.cuts.CutLists;
import org.calicograph.desk.lessons.LessonPage;
import org.calicograph.desk.opened.Clerk;
import org.calicograph.desk.results.ExhibitPane;
import org.calicograph.desk.sheets.SheetRequests;
import org.calicograph.desk.sheets.SheetPage;
import org.calicograph.desk.shelf.Looks;
import org.calicograph.desk.shelf.ShelfPage;
import org.calicograph.desk.start.StartWall;
import org.calicograph.notebook.DialValue;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.SessionOptions;
import org.calicograph.wire.Dial;

/** The pages that take the place of book or wall for a while: variations on the wall, the shelf over the book, a lesson over both. */
final class Pages implements SheetRequests, ShelfPage.Opened, LessonPage.Opened, StartWall.Choice {

    private final DeskWindow window;
    private final Worktable worktable;
    private final Looks looks;
    private final CutLists cuts;
    private Optional<Runnable> awaited = Optional.empty();
    private Optional<Clerk> clerk = Optional.empty();

    Pages(DeskWindow window, Worktable worktable) {
        this.window = window;
        this.worktable = worktable;
        this.cuts = new CutLists(worktable::plan, Platform::runLater);
        this.looks = new Looks(() -> window.sessionOptions().alone());
    }

    void variations() {
        if (window.drawing().may()) {
            window.open().overWall(() -> new SheetPage(this));
        }
    }

    /** The wall as at the start; false if no notebook was opened before. */
    boolean start() {
        List<Path> recent = window.papers().recents();
        if (recent.isEmpty()) {
            window.status().pointedAt("No notebook was saved here before");
            return false;
        }
        window.open().overAll(() -> {
            clerk.ifPresent(Clerk::close);
            clerk = Optional.of(new Clerk(Platform::runLater));
            return new StartWall(recent, clerk.get(), this);
        });
        return true;
    }

    @Override
    public void open(Path notebook) {
        window.papers().leave(window::askWhere, () -> window.papers().open(notebook));
    }

    @Override
    public void begin() {
        boolean untouched = window.papers().path().isEmpty() && window.opened().notebook().cells().stream().allMatch(c -> c.text().isBlank());
        if (untouched) {
            back();
        } else {
            window.papers().leave(window::askWhere, () -> window.papers().openNew());
        }
    }

    /** What hangs is laid across the wall over a dial; over a second one as well if it lies there already. */
    void spread(String dial) {
        if (window.drawing().may()) {
            SheetPage sheet = new SheetPage(this);
            window.open().overWall(() -> sheet);
            sheet.pull(dial);
        }
    }

    /** The cutting lists of what hangs. */
    CutLists cuts() {
        return cuts;
    }

    /** What is cut for what hangs, over the book; of one cloth first. */
    void cutting(Optional<String> cloth) {
        Optional<String> hung = window.wall().hung();
        if (hung.isEmpty()) {
            window.status().pointedAt("Nothing hangs on the wall yet");
            return;
        }
        CutListPage page = new CutListPage(this::back);
        window.open().overBook(() -> page);
        cuts.of(hung.get(), window.wall().exhibit(hung.get()), list -> page.show(list, cloth));
    }

    void library() {
        if (window.drawing().may()) {
            worktable.browse().thenAccept(found -> Platform.runLater(() -> window.open().overBook(() -> new ShelfPage(found, this))));
        }
    }

    void lesson() {
        if (window.drawing().may()) {
            boolean pending = worktable.states().values().stream().anyMatch(CellState::pending);
            awaited = pending ? Optional.of(this::lesson) : Optional.empty();
            if (pending) {
                window.status().pointedAt("The lesson opens as soon as all is drawn");
            } else {
                window.open().overBoth(() -> new LessonPage(this), LessonPage::figure);
            }
        }
    }

    /** All is drawn: opens what waited for that. */
    void drawn() {
        Optional<Runnable> deed = awaited;
        awaited = Optional.empty();
        deed.ifPresent(Runnable::run);
    }

    @Override
    public Map<String, CellState> states() {
        return worktable.states();
    }

    @Override
    public void turn(String dial, String value) {
        window.opened().setDial(dial, value);
    }

    @Override
    public Notebook notebook() {
        return window.opened().notebook();
    }

    @Override
    public List<CellSource> sources() {
        return Worktable.sources(notebook());
    }

    @Override
    public Map<String, List<String>> needs() {
        return worktable.needs();
    }

    @Override
    public List<Dial> dials() {
        return worktable.dials();
    }

    @Override
    public List<String> cellsWithPictures() {
        List<String> all = new ArrayList<>();
        window.column().codes().stream().filter(c -> ExhibitPane.hasPicture(c.exhibit())).forEach(c -> all.add(c.cellId()));
        window.opened().chosen().filter(all::remove).ifPresent(id -> all.add(0, id));
        window.wall().hung().filter(all::remove).ifPresent(id -> all.add(0, id));
        return all;
    }

    @Override
    public String pictureName(String cell) {
        return window.wall().pin(cell).map(String::valueOf).orElse(cell);
    }

    @Override
    public SessionOptions options() {
        return window.sessionOptions().alone();
    }

    @Override
    public void take(Map<String, String> dials) {
        Notebook turned = notebook();
        for (Map.Entry<String, String> each : dials.entrySet()) {
            turned = turned.withDial(each.getKey(), DialValue.of(each.getValue()));
        }
        window.opened().change(turned);
        window.back();
    }

    @Override
    public void change(Notebook notebook) {
        window.opened().change(notebook);
    }

    @Override
    public void put(String code) {
        window.back();
        int place = window.opened().chosen().map(id -> notebook().indexOf(id) + 1).orElse(0);
        String id = window.opened().addCode(place);
        window.opened().setText(id, code);
        window.write(id);
        window.drawing().now();
    }

    @Override
    public Optional<Path> ownFolder() {
        return window.papers().path().map(p -> p.resolveSibling("stdlib"));
    }

    @Override
    public void reload() {
        window.papers().grant();
        worktable.restart();
        worktable.drawAll();
    }

    /** Ends what the page that was shown is drawing. */
    void leave(Node page) {
        if (page instanceof SheetPage sheet) {
            sheet.close();
        } else if (page instanceof LessonPage lesson) {
            lesson.close();
        }
        looks.close();
    }

    @Override
    public Looks looks() {
        return looks;
    }

    @Override
    public void back() {
        window.back();
    }
}
