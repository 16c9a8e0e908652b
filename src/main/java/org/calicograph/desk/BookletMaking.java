package org.calicograph.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Paper;
import org.calicograph.drawing.Picture;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.BookletCell;
import org.calicograph.session.CellSource;
import org.calicograph.session.CellState;
import org.calicograph.session.Session;
import org.calicograph.session.SessionListener;
import org.calicograph.session.SessionOptions;

/** Makes the booklet of a notebook's quilt, beside the session that the window works with. */
final class BookletMaking {

    /** @param words why there are no pages */
    record Made(List<Picture> pages, Paper paper, String words) { }

    private BookletMaking() { }

    static CompletableFuture<Made> make(Notebook notebook, List<CellSource> sources, SessionOptions options) {
        Paper paper = Paper.A4;
        return CompletableFuture.supplyAsync(() -> {
            String why = "No line names a quilt or a draft; write 'var quilt = \u2026' in one.";
            for (String kind : List.of("Booklet", "Handout")) {
                for (String name : BookletCell.names(notebook)) {
                    List<CellSource> cells = new ArrayList<>(sources);
                    cells.add(BookletCell.of(kind, name, paper));
                    try (Session session = Session.open(cells, notebook.dialTexts(), options, SessionListener.NONE)) {
                        session.draw(BookletCell.ID).join();
                        CellState state = session.state(BookletCell.ID);
                        if (state instanceof CellState.Done done && done.exhibit() instanceof Exhibit.Several several) {
                            return new Made(several.parts().stream().filter(Exhibit.Drawn.class::isInstance)
                                    .map(p -> ((Exhibit.Drawn) p).picture()).toList(), paper, "");
                        } else if (state instanceof CellState.Failed failed && kind.equals("Booklet") && why.startsWith("No line")) {
                            why = "No booklet of '" + name + "': " + failed.failure().message();
                        }
                    }
                }
            }
            return new Made(List.of(), paper, why);
        });
    }
}
