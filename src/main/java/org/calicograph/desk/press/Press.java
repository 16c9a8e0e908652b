package org.calicograph.desk.press;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;

/** What prints pages. To be asked on JavaFX's thread. */
public interface Press {

    /** The printers that there are, the usual one first. */
    List<String> printers();

    /**
     * Prints pages, each as large as its paper.
     *
     * @param pages with their top left corners at the origin, in inches
     * @return done when all are handed over; a sentence for the desk
     */
    CompletableFuture<String> print(String printer, List<Picture> pages, Paper paper);
}
