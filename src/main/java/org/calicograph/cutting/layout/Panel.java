package org.calicograph.cutting.layout;

import java.util.List;
import org.calicograph.measure.Length;

/** A rectangle of cloth at some stage of the cutting: a blank, an offcut, or a panel cut edge to edge. */
public sealed interface Panel {

    Length across();

    Length along();

    /**
     * A blank as it lies on the cloth.
     *
     * @param blank  as it was asked for
     * @param turned true if it lies a quarter turn from that
     */
    record Taken(Blank blank, boolean turned) implements Panel {
        public Taken {
            if (turned && !blank.turnable()) {
                throw new IllegalArgumentException("'" + blank.name() + "' must not be turned; keep its direction");
            }
        }

        @Override
        public Length across() {
            return turned ? blank.along() : blank.across();
        }

        @Override
        public Length along() {
            return turned ? blank.across() : blank.along();
        }
    }

    /** What is left over. */
    record Offcut(Length across, Length along) implements Panel { }

    /** Panels parted by cuts across the width of the fabric, one below another; all equally wide. */
    record Rows(List<Panel> parts) implements Panel {
        public Rows {
            parts = List.copyOf(parts);
            Panel first = parts.get(0);
            for (Panel p : parts) {
                if (!p.across().equals(first.across())) {
                    throw new IllegalArgumentException("a cut across would not run from edge to edge: " + p.across() + " against " + first.across());
                }
            }
        }

        @Override
        public Length across() {
            return parts.get(0).across();
        }

        @Override
        public Length along() {
            return parts.stream().map(Panel::along).reduce(Length.ZERO, Length::plus);
        }
    }

    /** Panels parted by cuts along the selvedge, side by side; all equally long. */
    record Columns(List<Panel> parts) implements Panel {
        public Columns {
            parts = List.copyOf(parts);
            Panel first = parts.get(0);
            for (Panel p : parts) {
                if (!p.along().equals(first.along())) {
                    throw new IllegalArgumentException("a cut along would not run from edge to edge: " + p.along() + " against " + first.along());
                }
            }
        }

        @Override
        public Length across() {
            return parts.stream().map(Panel::across).reduce(Length.ZERO, Length::plus);
        }

        @Override
        public Length along() {
            return parts.get(0).along();
        }
    }

    /** The panel filled up with offcuts to the given size, which is at least its own. */
    default Panel filledTo(Length across, Length along) {
        if (this instanceof Rows rows && this.across().compareTo(across) < 0) {
            // Cuts across stay cuts across the whole.
            return new Rows(rows.parts().stream().map(p -> p.filledTo(across, p.along())).toList()).filledTo(across, along);
        }
        Panel wide = this;
        if (this.across().compareTo(across) < 0) {
            wide = columns(List.of(this, new Offcut(across.minus(this.across()), this.along())));
        }
        if (wide.along().compareTo(along) < 0) {
            wide = rows(List.of(wide, new Offcut(across, along.minus(wide.along()))));
        }
        return wide;
    }

    /** Panels one below another, each filled to the widest. */
    static Panel stacked(List<Panel> panels) {
        Length across = panels.stream().map(Panel::across).reduce(Length.ZERO, Length::max);
        return rows(panels.stream().map(p -> p.filledTo(across, p.along())).toList());
    }

    /** Panels side by side, each filled to the longest. */
    static Panel abreast(List<Panel> panels) {
        Length along = panels.stream().map(Panel::along).reduce(Length.ZERO, Length::max);
        return columns(panels.stream().map(p -> p.filledTo(p.across(), along)).toList());
    }

    private static Panel rows(List<Panel> parts) {
        return parts.size() == 1 ? parts.get(0) : new Rows(parts.stream()
                .flatMap(p -> p instanceof Rows r ? r.parts().stream() : java.util.stream.Stream.of(p)).toList());
    }

    private static Panel columns(List<Panel> parts) {
        return parts.size() == 1 ? parts.get(0) : new Columns(parts.stream()
                .flatMap(p -> p instanceof Columns c ? c.parts().stream() : java.util.stream.Stream.of(p)).toList());
    }
}
