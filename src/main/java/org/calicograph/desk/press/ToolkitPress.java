package org.calicograph.desk.press;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.print.PageLayout;
import javafx.print.PageOrientation;
import javafx.print.Printer;
import javafx.print.PrinterJob;
import javafx.scene.Group;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.writing.PngWriter;

/** Prints by the toolkit. A page is painted at 200 dots an inch, off the window's thread, and handed over as it is. */
public final class ToolkitPress implements Press {

    private static final double DPI = 200;
    /** The toolkit's unit on paper. */
    static final double POINTS = 72;

    @Override
    public List<String> printers() {
        Printer usual = Printer.getDefaultPrinter();
        return Stream.concat(Optional.ofNullable(usual).stream(), Printer.getAllPrinters().stream()).map(Printer::getName).distinct().toList();
    }

    @Override
    public CompletableFuture<String> print(String name, List<Picture> pages, Paper paper) {
        Optional<Printer> printer = Printer.getAllPrinters().stream().filter(p -> p.getName().equals(name)).findFirst();
        PrinterJob job = printer.map(PrinterJob::createPrinterJob).orElse(null);
        if (job == null) {
            return CompletableFuture.completedFuture("The printer '" + name + "' can't be reached; see that it is switched on, or save to a file.");
        }
        job.getJobSettings().setJobName("Calicograph");
        PageLayout layout = printer.get().createPageLayout(toolkits(paper), PageOrientation.PORTRAIT, Printer.MarginType.HARDWARE_MINIMUM);
        CompletableFuture<String> told = new CompletableFuture<>();
        CompletableFuture.supplyAsync(() -> painted(pages, paper)).whenComplete((images, trouble) -> Platform.runLater(() -> {
            int done = 0;
            for (int i = 0; images != null && i < images.size() && job.printPage(layout, sheet(images.get(i), paper, layout.getLeftMargin(), layout.getTopMargin())); i++) {
                done++;
            }
            boolean whole = done == pages.size() && job.endJob();
            if (!whole) {
                job.cancelJob();
            }
            told.complete(whole ? (done == 1 ? "The page is" : "All " + done + " pages are") + " on the way to " + name + ". Measure the printed inch before you cut."
                    : "The printer '" + name + "' stopped at page " + (done + 1) + " of " + pages.size() + "; see what it says, or save to a file.");
        }));
        return told;
    }

    private static javafx.print.Paper toolkits(Paper paper) {
        return paper.name().equals(Paper.LETTER.name()) ? javafx.print.Paper.NA_LETTER : paper.name().equals(Paper.A3.name()) ? javafx.print.Paper.A3 : javafx.print.Paper.A4;
    }

    private static List<byte[]> painted(List<Picture> pages, Paper paper) {
        List<byte[]> all = new ArrayList<>();
        pages.forEach(p -> all.add(PngWriter.write(PagePicture.onPaper(p, paper), DPI)));
        return all;
    }

    /** A page as the toolkit prints it: its own corner at the paper's, whatever margins the printer has; an inch is 72 points. */
    static Group sheet(byte[] png, Paper paper, double left, double top) {
        ImageView image = new ImageView(new Image(new ByteArrayInputStream(png)));
        image.setFitWidth(paper.width().inInches() * POINTS);
        image.setFitHeight(paper.height().inInches() * POINTS);
        image.setPreserveRatio(false);
        image.setTranslateX(-left);
        image.setTranslateY(-top);
        return new Group(image);
    }
}
