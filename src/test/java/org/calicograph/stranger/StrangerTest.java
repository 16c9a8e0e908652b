package org.calicograph.stranger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.calicograph.book.Booklet;
import org.calicograph.quilt.Quilt;
import org.junit.jupiter.api.Test;

/** The stranger works from printed pages; what she made is held against the quilt. */
class StrangerTest {

    static void sewn(Quilt quilt, Booklet booklet) {
        byte[] pdf = booklet.pdf();
        Stranger her = Stranger.with(pdf);
        if (!her.defects().isEmpty()) {
            keep(pdf);
        }
        assertThat(her.defects()).as(quilt.title()).isEmpty();
        assertThat(her.pieces()).as("pieces of " + quilt.title()).isEqualTo(quilt.top().patchCount());
        if (her.width() > 0) {
            assertThat(her.width()).isCloseTo(quilt.width().inInches(), within(0.02));
            assertThat(her.height()).isCloseTo(quilt.height().inInches(), within(0.02));
        }
        Map<String, Double> areas = new TreeMap<>();
        quilt.patches().forEach(p -> areas.merge(p.fabric().name(), p.shape().area().squareInches(), Double::sum));
        her.areas().forEach((cloth, area) -> {
            if (!area.isNaN()) {
                assertThat(area).as(cloth + " of " + quilt.title()).isCloseTo(areas.getOrDefault(cloth, 0.0), within(0.004 * area + 0.5));
            }
        });
    }

    /** What she could not sew can be looked at. */
    private static void keep(byte[] pdf) {
        try {
            Files.write(Path.of("target", "could-not-be-sewn.pdf"), pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void she_knows_none_of_our_classes() {
        List<String> known = new ArrayList<>();
        for (JavaClass each : new ClassFileImporter().importPath("target/test-classes/org/calicograph/stranger")) {
            if (!each.getName().matches(".*Stranger(Stdlib|Notebooks)?Test.*") && !each.getName().contains("EveningQuilt")) {
                each.getDirectDependenciesFromSelf().stream().map(d -> d.getTargetClass().getName())
                        .filter(n -> n.startsWith("org.calicograph.") && !n.startsWith("org.calicograph.stranger")).forEach(known::add);
            }
        }
        assertThat(known).isEmpty();
    }

    @Property(tries = 30)
    void she_sews_quilts_of_every_setting(@ForAll Random random) {
        Quilt quilt = EveningQuilt.of(random);
        sewn(quilt, Booklet.of(quilt));
    }
}
