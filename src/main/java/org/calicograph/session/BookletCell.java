package org.calicograph.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.calicograph.drawing.Paper;
import org.calicograph.notebook.Cell;
import org.calicograph.notebook.Notebook;

/** The cell that makes a booklet or a handout of what a notebook names; it stands behind the notebook's own cells. */
public final class BookletCell {

    /** No cell of a notebook may have this name. */
    public static final String ID = "_the-booklet";

    private static final Pattern NAMED = Pattern.compile("\\b(?:Quilt|Patchwork|Assembly|Booklet|Draft|Handout|var)\\s+([A-Za-z_]\\w*)\\s*=");

    private static final Pattern ASKED = Pattern.compile("(?s).*(?:^|\\n|;)\\s*((?:new\\s+)?Question\\s*[.(].*?)\\s*;?\\s*$");
    private static final Pattern LAST_NAME = Pattern.compile("(?s).*(?:^|\\n|;)\\s*([A-Za-z_]\\w*)\\s*;?\\s*$");

    private BookletCell() { }

    /**
     * Some parts of a booklet alone.
     *
     * @param parts by the names of their constants, one or more
     */
    public static CellSource ofParts(String name, Paper paper, List<String> parts) {
        String only = parts.stream().map(p -> "org.calicograph.book.Part." + p).collect(Collectors.joining(", "));
        return new CellSource(ID, "org.calicograph.book.Booklet.ofAny(" + name + ").on(org.calicograph.drawing.Paper." + paper.name().toUpperCase(Locale.ROOT) + ").only(" + only + ")");
    }

    /** @param kind {@code Booklet} or {@code Handout}, set on the paper; or {@code Sheaf}, which has its own */
    public static CellSource of(String kind, String name, Paper paper) {
        String made = "org.calicograph.book." + kind + ".ofAny(" + name + ")";
        return new CellSource(ID, kind.equals("Sheaf") ? made : made + ".on(org.calicograph.drawing.Paper." + paper.name().toUpperCase(Locale.ROOT) + ")");
    }

    /**
     * The questions that a lesson asks, with the answers on pages of their own.
     *
     * @param asking the cells that end with a question, one or more
     */
    public static CellSource ofQuestions(String title, List<Cell> asking, Paper paper) {
        return new CellSource(ID, "org.calicograph.course.QuestionSheet.of(\"" + title.replace("\\", "\\\\").replace("\"", "\\\"") + "\",\n"
                + asking.stream().map(c -> question(c.text())).collect(Collectors.joining(",\n"))
                + ").on(org.calicograph.drawing.Paper." + paper.name().toUpperCase(Locale.ROOT) + ").whole()");
    }

    /** What a cell that ends with a question ends with: the question itself, or its name. */
    static String question(String text) {
        Matcher asked = ASKED.matcher(text.strip());
        if (asked.matches()) {
            return asked.group(1);
        }
        Matcher name = LAST_NAME.matcher(text.strip());
        return name.matches() ? name.group(1) : text.strip();
    }

    /** The names that cells give to values that may be quilts, the last first. */
    public static List<String> names(Notebook notebook) {
        List<String> names = new ArrayList<>();
        for (Cell cell : notebook.cells()) {
            if (cell instanceof Cell.Code code) {
                Matcher m = NAMED.matcher(code.text());
                while (m.find()) {
                    names.remove(m.group(1));
                    names.add(0, m.group(1));
                }
            }
        }
        return names;
    }
}
