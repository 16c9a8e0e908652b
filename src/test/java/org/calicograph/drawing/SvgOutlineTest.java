package org.calicograph.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.calicograph.measure.Length.inches;

import java.nio.file.Files;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.calicograph.drawing.writing.SvgWriter;
import org.calicograph.geometry.Arc;
import org.calicograph.geometry.Cubic;
import org.calicograph.geometry.Path;
import org.calicograph.geometry.Point;
import org.calicograph.geometry.Region;
import org.calicograph.geometry.SvgPathData;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SvgOutlineTest {

    @TempDir
    java.nio.file.Path folder;

    private static Path one(String data) {
        List<Path> paths = SvgPathData.read(data);
        assertThat(paths).hasSize(1);
        return paths.get(0);
    }

    /** Absolute and relative commands draw the same (SVG 2, 9.3). */
    @Test
    void absolute_and_relative_commands_draw_the_same() {
        Path absolute = one("M 10 10 L 30 10 H 40 V 20 C 40 30 30 40 20 40 S 0 30 0 20 Q 0 10 5 10 T 10 10 Z");
        Path relative = one("m10,10l20,0h10v10c0 10-10 20-20 20s-20-10-20-20q0-10 5-10t5 0z");
        assertThat(relative.segments()).hasSameSizeAs(absolute.segments());
        for (int i = 0; i < absolute.segments().size(); i++) {
            for (double share : new double[] {0, 0.3, 0.7, 1}) {
                assertThat(relative.segments().get(i).at(share).distance(absolute.segments().get(i).at(share))).isLessThan(1e-9);
            }
        }
        assertThat(absolute.isClosed()).isTrue();
    }

    /** Numbers may stand without space where no doubt is left, and an arc's flags are one digit each (SVG 2, 9.3.9, the grammar). */
    @Test
    void numbers_may_be_packed_as_the_grammar_allows() {
        assertThat(one("M.5.5-1-1l1e1+2").end()).isEqualTo(new Point(9, 1));
        assertThat(one("M0 0a1 1 0 01 2 0").end()).isEqualTo(new Point(2, 0));
        assertThat(one("M0 0A1,1,0,0,1,2,0")).isEqualTo(one("M0 0a1 1 0 01 2 0"));
        assertThat(SvgPathData.read("M0 0 1 0 1 1z m5 5 1 0 0 1z")).hasSize(2).allMatch(Path::isClosed);
        assertThat(SvgPathData.read("M0 0 1 0 1 1z m5 5 1 0 0 1z").get(1).start()).isEqualTo(new Point(5, 5));
    }

    /** The four arcs between two points: large or small, clockwise or not (SVG 2, 9.3.8, the standard's own figure of four arcs). */
    @Property(tries = 40)
    void arcs_have_their_radius_and_take_the_side_that_the_flags_say(@ForAll @DoubleRange(min = 1.1, max = 9) double radius) {
        for (int large = 0; large < 2; large++) {
            for (int sweep = 0; sweep < 2; sweep++) {
                Arc arc = (Arc) one("M-1 0A" + radius + " " + radius + " 0 " + large + " " + sweep + " 1 0").segments().get(0);
                assertThat(arc.radius()).isCloseTo(radius, within(1e-6 * radius));
                assertThat(Math.abs(arc.sweep()) > Math.PI).isEqualTo(large == 1);
                assertThat(arc.sweep() > 0).isEqualTo(sweep == 1);
            }
        }
    }

    /** An ellipse's area is pi a b (any textbook of geometry); radii too small grow until the ends are reached (SVG 2, 9.5.1). */
    @Test
    void arcs_of_ellipses_keep_their_area_and_short_radii_grow() {
        Path ellipse = one("M-3 0A3 2 0 0 1 3 0A3 2 0 0 1-3 0Z");
        assertThat(ellipse.signedArea()).isCloseTo(Math.PI * 6, within(1e-3));
        Path turned = one("M0-3A3 2 90 0 1 0 3A3 2 90 0 1 0-3Z");
        assertThat(turned.bounds().width()).isCloseTo(4, within(1e-4));
        assertThat(((Arc) one("M0 0A1 1 0 0 1 10 0").segments().get(0)).radius()).isCloseTo(5, within(1e-9));
        assertThat(one("M0 0A0 1 0 0 1 10 0").isStraight()).isTrue();
        assertThat(one("M0 0A9e8 9e8 0 0 1 .1 0").isStraight()).isTrue();
    }

    /** A quadratic's point at half its way is a quarter of both ends and half of the control point (Bezier's formula). */
    @Test
    void quadratics_become_the_cubic_that_is_the_same_curve() {
        Cubic curve = (Cubic) one("M0 0Q4 8 10 2").segments().get(0);
        assertThat(curve.at(0.5).distance(new Point(0.25 * 10 + 0.5 * 4, 0.5 * 8 + 0.25 * 2))).isLessThan(1e-12);
    }

    @Test
    void a_file_is_read_with_its_shapes_and_transforms_and_scaled_to_a_size() throws Exception {
        java.nio.file.Path file = Files.writeString(folder.resolve("gull.svg"), """
                <?xml version="1.0"?>
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">
                  <defs><path id="unused" d="M0 0H900"/></defs>
                  <g transform="translate(10 20) scale(2)">
                    <rect x="0" y="0" width="30" height="20"/>
                    <circle cx="15" cy="10" r="5"/>
                    <circle cx="15" cy="10" r="2"/>
                    <polygon points="0,0 5,0 0,5" transform="rotate(90)"/>
                  </g>
                </svg>
                """);
        SvgOutline outline = SvgOutline.read(file);
        assertThat(outline.bounds().left()).isCloseTo(0, within(1e-9));
        assertThat(outline.bounds().right()).isCloseTo(70, within(1e-9));
        SvgOutline scaled = outline.scaledTo(inches(7));
        List<Region> regions = scaled.regions();
        assertThat(regions).hasSize(3);
        assertThat(regions.get(0).holes()).hasSize(1);
        assertThat(scaled.region().area().squareInches()).isCloseTo(24 - Math.PI, within(1e-9));
        assertThat(scaled.bounds().topLeft()).isEqualTo(Point.ORIGIN);
        assertThat(SvgOutline.of(SvgWriter.write(Picture.of(scaled.region()).outlined(Pen.SEAM))).regions().get(0).area().squareInches())
                .as("what our own writer wrote").isGreaterThan(0);
    }

    @Test
    void what_is_not_in_order_is_refused_with_its_place_and_the_repair() {
        assertThatThrownBy(() -> SvgPathData.read("L 0 0")).hasMessageContaining("begin it with M");
        assertThatThrownBy(() -> SvgPathData.read("M 0 0 L 1")).hasMessageContaining("ends where a number belongs");
        assertThatThrownBy(() -> SvgPathData.read("M 0 0 X 1 1")).hasMessageContaining("at character 7").hasMessageContaining("'X'");
        assertThatThrownBy(() -> SvgPathData.read("M 0 0 A 1 1 0 2 1 3 3")).hasMessageContaining("write 0 or 1");
        assertThatThrownBy(() -> SvgOutline.of("<html/>")).hasMessageContaining("<html>");
        assertThatThrownBy(() -> SvgOutline.of("<svg xmlns='http://www.w3.org/2000/svg'>")).hasMessageContaining("no XML in order");
        assertThatThrownBy(() -> SvgOutline.of("<svg xmlns='http://www.w3.org/2000/svg'/>")).hasMessageContaining("draws nothing");
        assertThatThrownBy(() -> SvgOutline.of("<svg xmlns='http://www.w3.org/2000/svg'><rect width='5cm' height='2'/></svg>")).hasMessageContaining("5cm");
        assertThatThrownBy(() -> SvgOutline.of("<svg xmlns='http://www.w3.org/2000/svg'><g transform='spin(3)'/></svg>")).hasMessageContaining("spin(3)");
        assertThatThrownBy(() -> SvgOutline.ofPath("M0 0L3 3").region()).hasMessageContaining("close its paths");
        assertThat(SvgPathData.read("  ")).isEmpty();
    }

    /** An entity that stands for a file must not be opened. */
    @Test
    void a_file_cannot_make_us_open_another() throws Exception {
        java.nio.file.Path secret = Files.writeString(folder.resolve("secret.txt"), "M0 0H5V5Z");
        String svg = "<!DOCTYPE svg [<!ENTITY e SYSTEM '" + secret.toUri() + "'>]><svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H1V1Z'/><title>&e;</title></svg>";
        assertThat(SvgOutline.of(svg).paths()).hasSize(1);
    }
}
