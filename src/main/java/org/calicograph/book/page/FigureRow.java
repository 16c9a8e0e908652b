package org.calicograph.book.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Figures that stand side by side.
 *
 * @param room how wide each may be, in inches
 */
record FigureRow(List<PageFlow.Figure> figures, double room) {

    static List<FigureRow> rows(int columns, double room, List<PageFlow.Figure> figures) {
        List<FigureRow> rows = new ArrayList<>();
        for (int from = 0; from < figures.size(); from += columns) {
            rows.add(new FigureRow(figures.subList(from, Math.min(figures.size(), from + columns)), room));
        }
        return rows;
    }

    /** How high the words beneath are. */
    double words() {
        return figures.stream().mapToDouble(f -> captions(f).size() * Type.SMALL * Type.LEADING).max().orElseThrow();
    }

    /** How high the highest is, none higher than the most. */
    double tallest(double most) {
        return figures.stream().mapToDouble(f -> f.picture().bounds().height() * scale(f, most)).max().orElseThrow();
    }

    double scale(PageFlow.Figure f, double most) {
        return Math.min(room / f.picture().bounds().width(), most / f.picture().bounds().height());
    }

    /** The lines of its title. */
    int titled(PageFlow.Figure f) {
        return f.title().isEmpty() ? 0 : Type.wrapped(f.title(), room, Type.SMALL).size();
    }

    /** The lines beneath it, its title's first. */
    List<String> captions(PageFlow.Figure f) {
        List<String> lines = new ArrayList<>(f.title().isEmpty() ? List.of() : Type.wrapped(f.title(), room, Type.SMALL));
        lines.addAll(f.words().isEmpty() ? List.of() : Type.wrapped(f.words(), room, Type.SMALL));
        return lines;
    }
}
