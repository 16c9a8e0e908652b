package org.calicograph.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.drawing.Table;

/**
 * How a quilt stands, as it is shown. {@link #read} gives back from {@link #exhibit} what was put in, so that what was
 * drawn once can be gathered later.
 *
 * @param title   the quilt's title
 * @param maker   who makes it; empty if that was not said
 * @param size    its finished size in words; empty if there is no quilt
 * @param picture the quilt; none if it could not be drawn
 */
public record StandingReport(String title, String maker, String size, Optional<Picture> picture, List<Finding> findings) {

    private static final List<String> COLUMNS = List.of("Season", "What", "Standing", "In words");
    private static final String BY = ", by ";

    public StandingReport {
        findings = List.copyOf(findings);
    }

    /** The season's worst: wrong before to do before right; to do where nothing was looked at. */
    public Finding.State state(Season season) {
        List<Finding.State> states = findings.stream().filter(f -> f.season() == season).map(Finding::state).toList();
        return states.contains(Finding.State.WRONG) ? Finding.State.WRONG
                : states.isEmpty() || states.contains(Finding.State.OPEN) ? Finding.State.OPEN : Finding.State.RIGHT;
    }

    /** The findings that must be mended. */
    public List<Finding> wrong() {
        return findings.stream().filter(f -> f.state() == Finding.State.WRONG).toList();
    }

    /** The same with more that was found, first. */
    public StandingReport with(List<Finding> more) {
        List<Finding> all = new ArrayList<>(more);
        all.addAll(findings);
        return new StandingReport(title, maker, size, picture, all);
    }

    /** The picture with the title, the maker and the size below it, and the findings as a table. */
    public Exhibit exhibit() {
        Table table = Table.of("How '" + title + "' stands" + (maker.isEmpty() ? "" : BY + maker), COLUMNS.toArray(String[]::new));
        for (Finding f : findings) {
            table = table.row(f.season().words(), f.what(), f.state().words(), f.words());
        }
        Exhibit told = Exhibit.of(table);
        return picture.isEmpty() ? Exhibit.several(told) : Exhibit.several(Exhibit.of(picture.get(), size), told);
    }

    /** What was shown, read back; empty if it is something else. */
    public static Optional<StandingReport> read(Exhibit exhibit) {
        if (!(exhibit instanceof Exhibit.Several several) || several.parts().isEmpty()
                || !(several.parts().get(several.parts().size() - 1) instanceof Exhibit.Tabled told) || !told.table().columns().equals(COLUMNS)) {
            return Optional.empty();
        }
        List<Finding> findings = new ArrayList<>();
        for (List<Table.Entry> row : told.table().rows()) {
            Optional<Season> season = Season.of(row.get(0).text());
            Optional<Finding.State> state = Finding.State.of(row.get(2).text());
            if (season.isEmpty() || state.isEmpty()) {
                return Optional.empty();
            }
            findings.add(new Finding(season.get(), row.get(1).text(), state.get(), row.get(3).text()));
        }
        String head = told.table().title();
        int end = head.indexOf("' stands");
        if (!head.startsWith("How '") || end < 0) {
            return Optional.empty();
        }
        end = head.lastIndexOf("' stands");
        String rest = head.substring(end + "' stands".length());
        Optional<Exhibit.Drawn> drawn = several.parts().size() == 2 && several.parts().get(0) instanceof Exhibit.Drawn d ? Optional.of(d) : Optional.empty();
        return Optional.of(new StandingReport(head.substring("How '".length(), end), rest.startsWith(BY) ? rest.substring(BY.length()) : "",
                drawn.map(Exhibit.Drawn::caption).orElse(""), drawn.map(Exhibit.Drawn::picture), findings));
    }
}
