package org.calicograph.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.calicograph.measure.Length.inches;

import java.util.ArrayList;
import java.util.List;
import org.calicograph.drafting.Draft;
import org.calicograph.drafting.Figure;
import org.calicograph.drawing.Picture;
import org.calicograph.geometry.Path;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The names on a draft, against an independent geometry library. */
class DraftPictureTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    private static Draft square() {
        return Draft.blank("Square", inches(6), inches(6)).point("A", inches(1), inches(5)).point("B", inches(5), inches(5)).point("C", inches(5), inches(1))
                .point("D", inches(1), inches(1)).segment("AB", "A", "B").segment("BC", "B", "C").segment("CD", "C", "D").segment("DA", "D", "A");
    }

    private static Draft octagon() {
        return square().segment("AC", "A", "C").segment("BD", "B", "D").crossing("O", "AC", "BD")
                .circle("a", "A", "O").circle("b", "B", "O").circle("c", "C", "O").circle("d", "D", "O")
                .crossing("P1", "b", "AB", "A").crossing("P2", "a", "AB", "B").crossing("P3", "c", "BC", "B").crossing("P4", "b", "BC", "C")
                .crossing("P5", "d", "CD", "C").crossing("P6", "c", "CD", "D").crossing("P7", "a", "DA", "D").crossing("P8", "d", "DA", "A");
    }

    private static Draft grid() {
        Draft draft = square().stepOff("S", "A", "B", inches("1/2"), 7);
        for (int i = 1; i <= 7; i++) {
            draft = draft.perpendicular("v" + i, "AB", "S" + i).crossing("T" + i, "v" + i, "CD");
        }
        return draft;
    }

    private static void letterings(Picture picture, List<Picture.Lettering> into) {
        if (picture instanceof Picture.Group group) {
            group.parts().forEach(p -> letterings(p, into));
        } else if (picture instanceof Picture.Lettering lettering) {
            into.add(lettering);
        }
    }

    /** A letter of the usual plain face is at most 0.72 of its size wide, its capitals and figures 0.73 high; from memory. */
    private static Geometry box(Picture.Lettering l) {
        double wide = 0.62 * l.size() * l.text().length();
        double left = l.anchor() == Picture.Anchor.START ? 0 : l.anchor() == Picture.Anchor.END ? wide : wide / 2;
        return JTS.toGeometry(new Envelope(l.at().x() - left, l.at().x() - left + wide, l.at().y() - 0.73 * l.size(), l.at().y()));
    }

    private static Geometry line(Path path) {
        return JTS.createLineString(path.flattened(1e-4).stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new));
    }

    private static void stand(Draft draft) {
        List<Picture.Lettering> names = new ArrayList<>();
        letterings(DraftPicture.of(draft), names);
        assertThat(names).hasSize((int) draft.figures().values().stream().filter(Figure.Dot.class::isInstance).count());
        for (Picture.Lettering name : names) {
            Geometry box = box(name);
            assertThat(new Envelope(0, 6, 0, 6).contains(box.getEnvelopeInternal())).as(name.text() + " on the sheet").isTrue();
            assertThat(box.distance(JTS.createPoint(new Coordinate(draft.at(name.text()).x(), draft.at(name.text()).y())))).as(name.text() + " by its point")
                    .isBetween(0.01, name.size());
            names.stream().filter(o -> o != name).forEach(o -> assertThat(box.intersects(box(o))).as(name.text() + " over " + o.text()).isFalse());
            draft.figures().forEach((other, figure) -> {
                if (!(figure instanceof Figure.Dot)) {
                    Path path = figure instanceof Figure.Rule rule ? rule.path() : ((Figure.Round) figure).path();
                    assertThat(box.intersects(line(path))).as(name.text() + " over the line " + other).isFalse();
                }
            });
        }
    }

    @Test
    void names_stand_by_their_points_clear_of_lines_and_of_each_other() {
        stand(square());
        stand(octagon());
        stand(grid());
    }

    @Test
    void a_name_keeps_its_place_from_step_to_step() {
        Draft draft = octagon();
        List<Picture.Lettering> early = new ArrayList<>();
        List<Picture.Lettering> late = new ArrayList<>();
        letterings(DraftPicture.step(draft, 3), early);
        letterings(DraftPicture.step(draft, draft.steps().size() - 1), late);
        assertThat(early).hasSize(4);
        early.forEach(e -> assertThat(late).anySatisfy(l -> {
            assertThat(l.text()).isEqualTo(e.text());
            assertThat(l.at()).isEqualTo(e.at());
        }));
    }

    @Test
    void every_word_of_a_step_stands_under_its_panel() {
        Draft draft = Draft.blank("Zigzag", inches(6), inches(6));
        List<String> points = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            draft = draft.point("N" + i, inches(1).plus(inches(1, 16).times(i)), inches(i % 2 == 0 ? 2 : 4));
            points.add("N" + i);
        }
        Draft inked = draft.ink("zigzag", points.toArray(String[]::new));
        List<Picture.Lettering> all = new ArrayList<>();
        letterings(DraftPicture.panels(inked, 8), all);
        String words = String.join(" ", all.stream().filter(l -> l.size() > 6 / 30.0).map(Picture.Lettering::text).toList());
        assertThat(words).contains("61. Ink N0 - N1 - ").contains("N57 - N58 - N59.");
    }
}
