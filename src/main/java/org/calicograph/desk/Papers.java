package org.calicograph.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.util.Duration;
import org.calicograph.desk.opened.Clerk;
import org.calicograph.desk.opened.Presence;
import org.calicograph.desk.opened.Recents;
import org.calicograph.desk.opened.Recovery;
import org.calicograph.desk.opened.OpenNotebook;
import org.calicograph.desk.opened.OpenFile;
import org.calicograph.desk.opened.Trust;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookReader;

/**
 * The open notebook's file: opening, saving, keeping unsaved work safe, noticing what others do to it. What
 * has to be decided is said in the notice bar, with the choices as buttons.
 */
final class Papers {

    /** The window, as the papers see it. */
    interface Table {

        /** Shows another notebook, with the results that its file has, and draws it if it is trusted. */
        void lay(OpenNotebook opened, Notebook asRead, boolean trusted);

        /** The notebook that lies there has come to be trusted: draws it. */
        void begin();

        /** The notebook that lies there may not be drawn any more. */
        void halt();

        /** The notebook with the results that it now has. */
        Notebook withResults();

        void savedAs(String words);

        /** The recent notebooks are others now. */
        void recent();
    }

    private static final String TRUST = "This notebook was not written here. What you see was saved in it; none of its working lines were drawn here."
            + " Working lines can do whatever you can do on this computer, so draw them only if you know where they come from.";

    private final Table table;
    private final NoticeBar notices;
    private final DeskOptions options;
    private final Recents recents;
    private final Trust trust;
    private final Presence presence;
    private final Clerk clerk = new Clerk(Platform::runLater);
    private final PauseTransition autosave = new PauseTransition(Duration.seconds(2));
    private final Timeline watch = new Timeline(new KeyFrame(Duration.seconds(2), e -> lookAtFile()));
    private OpenNotebook opened = new OpenNotebook(Notebook.titled(""));
    private Optional<OpenFile> file = Optional.empty();
    private boolean trusted = true;
    /** True once it was said that the file is not there any more. */
    private boolean gone;

    Papers(Table table, NoticeBar notices, DeskOptions options) {
        this.table = table;
        this.notices = notices;
        this.options = options;
        this.recents = new Recents(options.own());
        this.trust = new Trust(options.own(), options.product());
        this.presence = new Presence(options.own());
        autosave.setOnFinished(e -> keepSafe());
        watch.setCycleCount(Animation.INDEFINITE);
        watch.play();
    }

    Optional<Path> path() {
        return file.map(OpenFile::path);
    }

    boolean isTrusted() {
        return trusted;
    }

    Map<String, Path> recent() {
        Map<String, Path> all = new LinkedHashMap<>();
        recents.list().forEach(p -> all.put(p.getFileName() + "   in " + p.getParent(), p));
        return all;
    }

    /** The notebook with which the desk is first met. */
    void openFirst() {
        try (InputStream in = Papers.class.getResourceAsStream("first-evening.json")) {
            begin(NotebookReader.read(in.readAllBytes(), "first-evening.json"), Optional.empty(), true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        offerLeft(Recovery.in(options.own()));
    }

    List<Path> recents() {
        return recents.list();
    }

    /** An empty notebook behind the wall of the start, and what may be left of one that had no file. */
    void openStart() {
        openNew();
        offerLeft(Recovery.in(options.own()));
    }

    void openNew() {
        begin(Notebook.titled("", Cell.prose("a1", ""), Cell.code("a2", "")), Optional.empty(), true);
    }

    /** Opens a file, or says why it can't be opened and leaves the desk as it is. */
    boolean open(Path path) {
        try {
            OpenFile opened = OpenFile.at(path);
            Notebook notebook = opened.read();
            recents.add(opened.path());
            begin(notebook, Optional.of(opened), trust.holds(notebook, opened.path()));
            offerLeft(Recovery.beside(opened.path()));
            return true;
        } catch (NotebookException e) {
            notices.say("file", e.getMessage());
            return false;
        }
    }

    private void begin(Notebook notebook, Optional<OpenFile> from, boolean mayRun) {
        autosave.stop();
        recovery().clear();
        notices.hushAll();
        presence.close();
        from.ifPresent(f -> {
            if (presence.isOpenElsewhere(f.path())) {
                notices.say("twice", f.path().getFileName() + " is open in another window too. Whichever saves second will be told what the first has written.");
            }
            presence.open(f.path());
        });
        file = from;
        trusted = mayRun;
        opened = new OpenNotebook(notebook);
        opened.watch((before, after) -> changed());
        table.lay(opened, notebook, mayRun);
        if (!mayRun) {
            askTrust();
        }
        tell();
    }

    /** Asks whether this notebook's code may run. */
    void askTrust() {
        notices.say("trust", TRUST, deeds("I know it: draw", this::trustIt, "Only look", () -> { }));
    }

    /** The person says that this notebook's code may run. */
    void trustIt() {
        trusted = true;
        notices.hush("trust");
        grant();
        table.begin();
    }

    /** The notebook's code, and the routines beside it, may run as they are now. */
    void grant() {
        if (trusted) {
            path().ifPresentOrElse(from -> trust.grant(opened.notebook(), from), () -> trust.grant(opened.notebook()));
        }
    }

    private void offerLeft(Recovery place) {
        place.find().ifPresent(left -> notices.say("left", "The desk was closed before this notebook was saved. The unsaved work is still here.",
                deeds("Take it up", () -> takeUp(left), "Throw it away", left::discard)));
    }

    /** What was left becomes this window's own; what was written here before can be had back by undoing. */
    private void takeUp(Recovery.Left left) {
        try {
            Notebook unsaved = left.read();
            if (opened.isUnsaved()) {
                opened.change(unsaved);
            } else {
                begin(unsaved, file, trusted);
            }
            opened.markUnsaved();
            tell();
            Recovery place = recovery();
            clerk.ask(() -> {
                place.takeOver(left);
                return true;
            }, done -> { }, this::notKept);
        } catch (NotebookException e) {
            notices.say("file", e.getMessage());
        }
    }

    private void notKept(Exception e) {
        notices.say("recovery", "Unsaved work can't be kept safe: " + e.getMessage());
    }

    private Recovery recovery() {
        return file.filter(f -> Files.isDirectory(f.path().getParent())).map(f -> Recovery.beside(f.path())).orElseGet(() -> Recovery.in(options.own()));
    }

    /** Kept two seconds after the first change, and every two seconds while one writes on. */
    private void changed() {
        if (autosave.getStatus() != Animation.Status.RUNNING) {
            autosave.playFromStart();
        }
        tell();
    }

    private void tell() {
        String name = file.map(f -> f.path().getFileName().toString()).orElse("no file yet");
        table.savedAs(opened.isUnsaved() ? "\u25cf " + name + ", unsaved" : name);
    }

    private void keepSafe() {
        Recovery place = recovery();
        Notebook now = opened.notebook();
        boolean unsaved = opened.isUnsaved();
        clerk.ask(() -> {
            if (unsaved) {
                place.keep(now);
            } else {
                place.clear();
            }
            return unsaved;
        }, done -> notices.hush("recovery"), this::notKept);
    }

    /** @param ask where to save a notebook that has no file yet; empty if the person thinks better of it */
    void save(Supplier<Optional<Path>> ask) {
        save(ask, () -> { });
    }

    private void save(Supplier<Optional<Path>> ask, Runnable then) {
        file.ifPresentOrElse(f -> save(f, then), () -> saveAs(ask, then));
    }

    void saveAs(Supplier<Optional<Path>> ask) {
        saveAs(ask, () -> { });
    }

    private void saveAs(Supplier<Optional<Path>> ask, Runnable then) {
        ask.get().ifPresent(path -> {
            if (path.getFileName().toString().contains(".")) {
                saveAs(OpenFile.at(path), then);
                return;
            }
            // The dialog has asked about the name that was typed, not about this one.
            Path named = path.resolveSibling(path.getFileName() + ".json");
            if (!Files.exists(named)) {
                saveAs(OpenFile.at(named), then);
                return;
            }
            notices.say("replace", named.getFileName() + " is there already.", deeds("Replace it", () -> saveAs(OpenFile.at(named), then), "Leave it", () -> { }));
        });
    }

    private void saveAs(OpenFile to, Runnable then) {
        Recovery before = recovery();
        save(to, () -> {
            before.clear();
            file = Optional.of(to);
            presence.open(to.path());
            recents.add(to.path());
            table.recent();
            tell();
            then.run();
        });
    }

    private void save(OpenFile to, Runnable then) {
        boolean mine = file.equals(Optional.of(to));
        Notebook whole = table.withResults();
        Notebook words = opened.notebook();
        OpenNotebook its = opened;
        boolean mayRun = trusted;
        Recovery place = recovery();
        clerk.ask(() -> {
            if (mine && to.isChangedElsewhere()) {
                return false;
            }
            place.aboutToSave(words);
            to.save(whole);
            if (mayRun) {
                trust.grant(words, to.path());
            }
            return true;
        }, saved -> {
            if (!saved) {
                sayChanged();
                return;
            }
            its.markSaved(words);
            keepSafe();
            notices.hush("file");
            notices.hush("gone");
            tell();
            then.run();
        }, e -> notices.say("file", "Not saved. " + e.getMessage()));
    }

    /** Looks whether somebody else has written the file, or taken it away. */
    void lookAtFile() {
        Optional<OpenFile> there = file;
        there.ifPresent(f -> clerk.ask(() -> f.isGone() ? "gone" : f.isChangedElsewhere() ? "changed" : "", found -> {
            if (file.equals(there) && found.equals("changed") && !notices.says("changed")) {
                sayChanged();
            } else if (file.equals(there) && found.equals("gone") && !notices.says("gone") && !gone) {
                gone = true;
                opened.markUnsaved();
                tell();
                notices.say("gone", f.path() + " is not there any more: it was taken away, or its folder was moved. What you have here is whole; save it as a file again.");
            } else if (found.isEmpty()) {
                gone = false;
            }
        }, e -> { }));
    }

    private void sayChanged() {
        OpenFile there = file.orElseThrow();
        notices.say("changed", there.path().getFileName() + " was changed by somebody else since you opened it."
                + (opened.isUnsaved() ? " What you have here is not saved." : ""),
                deeds("Take theirs", () -> takeTheirs(there), "Keep mine", () -> {
                    there.overlook();
                    opened.markUnsaved();
                    tell();
                }));
    }

    /** Takes what the file holds now, as a step that undo takes back. */
    private void takeTheirs(OpenFile there) {
        try {
            Notebook theirs = there.read();
            if (!trust.holds(theirs, there.path())) {
                trusted = false;
                table.halt();
            }
            opened.change(theirs.withoutResults());
            opened.markSaved();
            tell();
            if (!trusted) {
                askTrust();
            }
        } catch (NotebookException e) {
            notices.say("file", e.getMessage());
        }
    }

    /** Does what has to wait until the notebook may be left; asks first if it is unsaved. */
    void leave(Supplier<Optional<Path>> ask, Runnable then) {
        if (!opened.isUnsaved()) {
            then.run();
            return;
        }
        Map<String, Runnable> deeds = new LinkedHashMap<>();
        deeds.put("Save first", () -> save(ask, then));
        deeds.put("Leave unsaved", () -> {
            opened.markSaved();
            autosave.stop();
            recovery().clear();
            then.run();
        });
        deeds.put("Stay", () -> { });
        notices.say("leave", "The notebook has changes that are not saved.", deeds);
    }

    void close() {
        watch.stop();
        autosave.stop();
        clerk.close();
        presence.close();
        if (!opened.isUnsaved()) {
            recovery().clear();
        }
    }

    private static Map<String, Runnable> deeds(String first, Runnable one, String second, Runnable other) {
        Map<String, Runnable> deeds = new LinkedHashMap<>();
        deeds.put(first, one);
        deeds.put(second, other);
        return deeds;
    }
}
