package org.calicograph.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.PauseTransition;
import javafx.animation.Timeline;
import javafx.util.Duration;
import org.calicograph.desk.opened.Recents;
import org.calicograph.desk.opened.Recovery;
import org.calicograph.desk.opened.OpenNotebook;
import org.calicograph.desk.opened.OpenFile;
import org.calicograph.desk.opened.Trust;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;
import org.calicograph.notebook.NotebookException;
import org.calicograph.notebook.NotebookFile;

/**
 * The open study's file: opening, saving, keeping unsaved work safe, noticing what others do to it. What
 * has to be decided is said in the notice bar, with the choices as buttons.
 */
final class Papers {

    /** The window, as the papers see it. */
    interface Table {

        /** Shows another study, with the results that its file has, and draws it if it is trusted. */
        void lay(OpenNotebook study, Notebook asRead, boolean trusted);

        /** The study that lies there has come to be trusted: draws it. */
        void begin();

        /** The notebook with the results that it now has. */
        Notebook withResults();

        void savedAs(String words);

        /** The recent studies are others now. */
        void recent();
    }

    private static final String TRUST = "This notebook was not written here. What you see was saved in it; none of its working lines have run."
            + " Working lines can do whatever you can do on this computer, so draw them only if you know where they come from.";

    private final Table table;
    private final NoticeBar notices;
    private final DeskOptions options;
    private final Recents recents;
    private final Trust trust;
    private final PauseTransition autosave = new PauseTransition(Duration.seconds(2));
    private final Timeline watch = new Timeline(new KeyFrame(Duration.seconds(2), e -> lookAtFile()));
    private OpenNotebook study = new OpenNotebook(Notebook.titled(""));
    private Optional<OpenFile> file = Optional.empty();
    private boolean trusted = true;

    Papers(Table table, NoticeBar notices, DeskOptions options) {
        this.table = table;
        this.notices = notices;
        this.options = options;
        this.recents = new Recents(options.own());
        this.trust = new Trust(options.own(), options.product());
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

    /** The study with which the desk is first met. */
    void openFirst() {
        try (InputStream in = Papers.class.getResourceAsStream("first-evening.json")) {
            Path copy = Files.createTempFile("first-evening", ".json");
            Files.write(copy, in.readAllBytes());
            Notebook notebook = NotebookFile.read(copy);
            Files.delete(copy);
            begin(notebook, Optional.empty(), true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
        file = from;
        trusted = mayRun;
        study = new OpenNotebook(notebook);
        study.watch((before, after) -> changed());
        table.lay(study, notebook, mayRun);
        if (!mayRun) {
            askTrust();
        }
        tell();
    }

    /** Asks whether this study's code may run. */
    void askTrust() {
        notices.say("trust", TRUST, deeds("I know it: draw", this::trustIt, "Only look", () -> { }));
    }

    /** The person says that this study's code may run. */
    void trustIt() {
        trusted = true;
        notices.hush("trust");
        grant();
        table.begin();
    }

    /** The study's code, and the routines beside it, may run as they are now. */
    void grant() {
        if (trusted) {
            path().ifPresentOrElse(from -> trust.grant(study.notebook(), from), () -> trust.grant(study.notebook()));
        }
    }

    private void offerLeft(Recovery place) {
        place.find().ifPresent(left -> notices.say("left", "The desk was closed before this notebook was saved. The unsaved work is still here.",
                deeds("Take it up", () -> takeUp(left), "Throw it away", left::discard)));
    }

    private void takeUp(Recovery.Left left) {
        try {
            Notebook unsaved = left.read();
            boolean mayRun = trusted;
            begin(unsaved, file, mayRun);
            study.markUnsaved();
            keepSafe();
            left.discard();
            tell();
        } catch (NotebookException e) {
            notices.say("file", e.getMessage());
        }
    }

    private Recovery recovery() {
        return file.map(f -> Recovery.beside(f.path())).orElseGet(() -> Recovery.in(options.own()));
    }

    private void changed() {
        autosave.playFromStart();
        tell();
    }

    private void tell() {
        String name = file.map(f -> f.path().getFileName().toString()).orElse("no file yet");
        table.savedAs(study.isUnsaved() ? "\u25cf " + name + ", unsaved" : name);
    }

    private void keepSafe() {
        if (study.isUnsaved()) {
            try {
                recovery().keep(study.notebook());
                notices.hush("recovery");
            } catch (NotebookException e) {
                notices.say("recovery", "Unsaved work can't be kept safe: " + e.getMessage());
            }
        } else {
            recovery().clear();
        }
    }

    /** @param ask where to save a study that has no file yet; empty if the person thinks better of it */
    boolean save(Supplier<Optional<Path>> ask) {
        if (file.isPresent()) {
            return save(file.get());
        }
        return saveAs(ask);
    }

    boolean saveAs(Supplier<Optional<Path>> ask) {
        return ask.get().map(path -> {
            Path named = path.getFileName().toString().contains(".") ? path : path.resolveSibling(path.getFileName() + ".json");
            OpenFile to = OpenFile.at(named);
            Recovery before = recovery();
            if (!save(to)) {
                return false;
            }
            before.clear();
            file = Optional.of(to);
            recents.add(to.path());
            table.recent();
            tell();
            return true;
        }).orElse(false);
    }

    private boolean save(OpenFile to) {
        if (file.equals(Optional.of(to)) && to.isChangedElsewhere()) {
            sayChanged();
            return false;
        }
        try {
            to.save(table.withResults());
            if (trusted) {
                trust.grant(study.notebook(), to.path());
            }
            study.markSaved();
            autosave.stop();
            recovery().clear();
            notices.hush("file");
            tell();
            return true;
        } catch (NotebookException e) {
            notices.say("file", "Not saved. " + e.getMessage());
            return false;
        }
    }

    /** Looks whether somebody else has written the file. */
    void lookAtFile() {
        if (file.isPresent() && !notices.says("changed") && file.get().isChangedElsewhere()) {
            sayChanged();
        }
    }

    private void sayChanged() {
        OpenFile there = file.orElseThrow();
        notices.say("changed", there.path().getFileName() + " was changed by somebody else since you opened it."
                + (study.isUnsaved() ? " What you have here is not saved." : ""),
                deeds("Load theirs", () -> open(there.path()), "Keep mine", there::overlook));
    }

    /** Does what has to wait until the study may be left; asks first if it is unsaved. */
    void leave(Supplier<Optional<Path>> ask, Runnable then) {
        if (!study.isUnsaved()) {
            then.run();
            return;
        }
        Map<String, Runnable> deeds = new LinkedHashMap<>();
        deeds.put("Save first", () -> {
            if (save(ask)) {
                then.run();
            }
        });
        deeds.put("Leave unsaved", () -> {
            study.markSaved();
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
        if (!study.isUnsaved()) {
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
