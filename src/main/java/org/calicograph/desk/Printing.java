package org.calicograph.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import org.calicograph.desk.press.PagePicture;
import org.calicograph.desk.press.Press;
import org.calicograph.desk.press.PreviewPage;
import org.calicograph.desk.press.ToolkitPress;
import org.calicograph.desk.results.PictureView;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PdfWriter;
import org.calicograph.drawing.writing.PngWriter;
import org.calicograph.drawing.writing.SvgWriter;

/** What leaves the window on paper or as a file: the picture that hangs, and the booklet. */
final class Printing {

    private static final double DPI = 150;

    private final DeskWindow window;
    private final NoticeBar notices;
    private Press press = new ToolkitPress();

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
        String title = window.opened().notebook().title();
        write(file, () -> name.endsWith(".svg") ? SvgWriter.write(picture).getBytes(java.nio.charset.StandardCharsets.UTF_8)
                : name.endsWith(".png") ? PngWriter.write(picture, DPI) : PdfWriter.write(title, picture));
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

    /** Another press, as in a room without printers. */
    void press(Press other) {
        press = other;
    }

    /** The picture that hangs, on one page, to a printer. */
    void printPicture() {
        hanging().ifPresent(picture -> {
            PagePicture.Laid laid = PagePicture.inTheMiddle(picture, Paper.A4);
            preview(List.of(laid.page()), Paper.A4, laid.scale() == 1 ? "At full size: an inch is an inch on the paper."
                    : "Too large for the paper: drawn at " + Math.max(1, Math.round(laid.scale() * 100)) + " % of its size. Don't cut by it.");
        });
    }

    /** The booklet, to a printer. */
    void printBooklet() {
        if (window.drawing().may()) {
            made(made -> preview(made.pages(), made.paper(), "The booklet. Templates are at full size; measure the printed inch before you cut."));
        }
    }

    private void preview(List<Picture> pages, Paper paper, String words) {
        window.open().overWall(() -> new PreviewPage(pages, paper, words, press, window::back));
    }

    void booklet(Path file) {
        String title = window.opened().notebook().title();
        made(made -> write(file, () -> PdfWriter.write(title, made.pages(), made.paper().width(), made.paper().height())));
    }

    private void made(Consumer<BookletMaking.Made> then) {
        notices.say("paper", "The booklet is being made\u2026");
        BookletMaking.make(window.opened().notebook(), Worktable.sources(window.opened().notebook()), window.sessionOptions().alone())
                .thenAccept(made -> Platform.runLater(() -> {
                    if (made.pages().isEmpty()) {
                        notices.say("paper", made.words());
                    } else {
                        notices.hush("paper");
                        then.accept(made);
                    }
                }));
    }
}
