package org.calicograph.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import org.calicograph.desk.results.PictureView;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;

/** What leaves the window on paper or as a file: the picture that hangs, and the booklet. */
final class Printing {

    private static final double DPI = 150;

    private final DeskWindow window;
    private final NoticeBar notices;

    Printing(DeskWindow window, NoticeBar notices) {
        this.window = window;
        this.notices = notices;
    }

    private Optional<Picture> hanging() {
        Optional<Picture> picture = window.wall().meant().map(PictureView::picture);
        if (picture.isEmpty()) {
            notices.say("paper", "Nothing hangs on the wall yet; draw something first.");
        }
        return picture;
    }

    /** The picture that hangs, to a file whose ending says how: .svg, .png or .pdf. */
    void picture() {
        hanging().ifPresent(picture -> window.files().picture(window.opened().notebook().title(), window.papers().path())
                .ifPresent(file -> save(picture, file)));
    }

    /** Writes the picture; the window goes on meanwhile. */
    void save(Picture picture, Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        if (!name.matches(".*\\.(svg|png|pdf)")) {
            notices.say("paper", "'" + file.getFileName() + "' doesn't say what kind of file it is to be; end it with .svg, .png or .pdf.");
            return;
        }
        write(file, () -> name.endsWith(".svg") ? SvgWriter.write(picture).getBytes(java.nio.charset.StandardCharsets.UTF_8)
                : name.endsWith(".png") ? PngWriter.write(picture, DPI) : PdfWriter.write(picture));
    }

    private void write(Path file, java.util.concurrent.Callable<byte[]> made) {
        CompletableFuture.supplyAsync(() -> {
            try {
                Path part = Files.createTempFile(file.toAbsolutePath().getParent(), ".paper", ".part");
                Files.write(part, made.call());
                Files.move(part, file, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
                return "It is in " + file + ".";
            } catch (IOException e) {
                return file + " can't be written: " + e.getMessage();
            } catch (Exception e) {
                return "It can't be made: " + e.getMessage();
            }
        }).thenAccept(words -> Platform.runLater(() -> notices.say("paper", words)));
    }

    /** The picture that hangs, to the clipboard. */
    void copy() {
        hanging().ifPresent(picture -> CompletableFuture.supplyAsync(() -> PngWriter.write(picture, DPI)).thenAccept(png -> Platform.runLater(() -> {
            ClipboardContent content = new ClipboardContent();
            content.putImage(new Image(new java.io.ByteArrayInputStream(png)));
            Clipboard.getSystemClipboard().setContent(content);
            window.status().pointedAt("The picture is on the clipboard");
        })));
    }

    /** The booklet of the notebook's quilt, to a file. */
    void booklet() {
        notices.say("paper", "");
        notices.hush("paper");
        if (window.drawing().may()) {
            window.files().booklet(window.opened().notebook().title(), window.papers().path()).ifPresent(this::booklet);
        }
    }

    void booklet(Path file) {
        notices.say("paper", "The booklet is being made\u2026");
        BookletMaking.make(window.opened().notebook(), Worktable.sources(window.opened().notebook()), window.sessionOptions().alone())
                .thenAccept(made -> Platform.runLater(() -> {
                    if (made.pages().isEmpty()) {
                        notices.say("paper", made.words());
                    } else {
                        List<Picture> pages = made.pages();
                        write(file, () -> PdfWriter.write(pages, made.paper().width(), made.paper().height()));
                    }
                }));
    }
}
