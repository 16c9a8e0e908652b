package org.calicograph.kernel;

import java.util.List;
import org.calicograph.drawing.Exhibit;

/** What a turn of a dial tells as it goes. */
interface Turning {

    /**
     * How a turn ended.
     *
     * @param anew cells that must be evaluated instead
     * @param owed cells that were sketched
     */
    record End(List<String> anew, List<String> owed) { }

    void begins(String cell);

    /** True if the exhibit has been told well enough for now; then the cell doesn't end, and its exhibit is owed. */
    boolean sketched(String cell, Exhibit exhibit, long began, long ran) throws Exception;

    void ends(String cell, Cells.Result result);
}
