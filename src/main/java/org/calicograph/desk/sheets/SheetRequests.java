package org.calicograph.desk.sheets;

import java.util.List;
import java.util.Map;
import org.calicograph.notebook.Notebook;
import org.calicograph.session.CellSource;
import org.calicograph.session.SessionOptions;
import org.calicograph.wire.Dial;

/** What the page of variations needs of the open notebook. Everything is called on JavaFX's thread. */
public interface SheetRequests {

    Notebook notebook();

    List<CellSource> sources();

    Map<String, List<String>> needs();

    List<Dial> dials();

    /** Cells that show a picture now, the one that hangs first. */
    List<String> cellsWithPictures();

    /** What the picture of a cell is called on the screen: the number of its pin. */
    String pictureName(String cell);

    /** How its kernel runs, and how lengths are written. */
    SessionOptions options();

    /** Turns the notebook's dials to these values and goes back to it. */
    void take(Map<String, String> dials);

    void change(Notebook notebook);

    void back();
}
