package org.calicograph.colouring.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.calicograph.Golden;
import org.calicograph.colour.Colour;
import org.calicograph.colour.Photo;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.fabric.Fabric;
import org.calicograph.fabric.Palette;
import org.calicograph.fabric.Ramp;
import org.calicograph.fabric.Role;
import org.calicograph.fabric.Stash;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.BlockDraft;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.show.PatchworkPicture;
import org.junit.jupiter.api.Test;

class EffectTest {

    private static Block grid(int squares) {
        BlockDraft draft = Block.onGrid("Shingle", squares, Length.inches(squares));
        for (int y = 0; y < squares; y++) {
            for (int x = 0; x < squares; x++) {
                draft = draft.square(Role.DARK, x, y, 1);
            }
        }
        return draft.block();
    }

    private static List<Fabric> fabrics(Effect effect) {
        return switch (effect) {
            case LUSTRE, LIGHT -> Ramp.through(Colour.hex("#2a5f99"), 12).palette("tide").fabrics();
            case DEPTH -> Ramp.between(Colour.hex("#1b4f72"), Colour.hex("#dfe6ea"), 10).palette("hills").fabrics();
            case LUMINOSITY -> {
                List<Fabric> all = new ArrayList<>(Ramp.between(Colour.hex("#ffd24a"), Colour.hex("#ffb020"), 3).palette("lamp").fabrics());
                Ramp.between(Colour.hex("#6a6f78"), Colour.hex("#23262d"), 8).palette("night").fabrics().forEach(all::add);
                yield all;
            }
        };
    }

    @Test
    void each_effect_is_found_where_it_was_asked_for_and_no_other_of_its_kind() {
        List<Picture> pictures = new ArrayList<>();
        for (Effect effect : Effect.values()) {
            Patchwork top = effect.on(grid(16), fabrics(effect));
            Patchwork small = effect.on(grid(8), fabrics(effect));
            EffectReport report = EffectReport.of(top);
            assertThat(report.has(effect)).as(report.readings().toString()).isTrue();
            for (Effect other : Effect.values()) {
                // Hills that fade upwards are light from above, too; nothing else is two things at once.
                if (other != effect && !(effect == Effect.DEPTH && other == Effect.LIGHT)) {
                    assertThat(report.has(other)).as(effect + ": " + report.readings()).isFalse();
                }
            }
            pictures.add(PatchworkPicture.of(small).scaled(0.3).moved(pictures.size() * 2.6, 0));
        }
        Golden.picture("colour/effects", Picture.group(pictures));
    }

    @Test
    void a_chequer_a_plain_top_and_a_scatter_have_none() {
        Fabric dark = Fabric.of("ink", "#1c2833");
        Fabric light = Fabric.of("foam", "#f4f1e4");
        Patchwork chequer = grid(12).recoloured(p -> (int) (p.shape().centroid().x()) % 2 == (int) (p.shape().centroid().y()) % 2 ? dark : light);
        Random chance = new Random(5);
        Patchwork scatter = grid(12).recoloured(p -> fabrics(Effect.LIGHT).get(chance.nextInt(12)));
        for (Patchwork top : List.of(chequer, grid(12), scatter)) {
            assertThat(EffectReport.of(top).readings()).noneMatch(EffectReport.Reading::found);
        }
        assertThatThrownBy(() -> Effect.LUSTRE.on(grid(3), List.of(dark, light))).hasMessageContaining("4 or more");
    }

    @Test
    void a_lamp_in_a_photograph_glows_and_an_evening_sky_is_light_from_one_side() {
        Photo lamp = Photo.drawn(200, 150, (x, y) -> Math.hypot(x - 130, y - 60) < 22 ? 0xfff4d0 : 0x252830);
        Photo sky = Photo.drawn(200, 150, (x, y) -> {
            int v = 30 + y;
            return v << 16 | v << 8 | v;
        });
        EffectReport glow = EffectReport.of(lamp, 40, 7);
        assertThat(glow.has(Effect.LUMINOSITY)).as(glow.readings().toString()).isTrue();
        EffectReport evening = EffectReport.of(sky, 20, 10);
        assertThat(evening.has(Effect.LIGHT)).as(evening.readings().toString()).isTrue();
        assertThat(evening.readings().get(3).words()).contains("the bottom");
        assertThat(evening.has(Effect.LUMINOSITY)).as(evening.readings().toString()).isFalse();
    }

    @Test
    void what_goes_with_a_print_is_near_one_of_its_own_colours() {
        Photo print = Photo.drawn(120, 80, (x, y) -> (x / 10 + y / 10) % 4 == 0 ? 0xb5452c : (x / 10 + y / 10) % 4 == 1 ? 0x2a5f99 : 0xe9dcc2);
        Stash stash = Stash.of(Fabric.of("harbour", "#2c5f95"), Fabric.of("moss", "#4b7a3a"), Fabric.of("sand", "#e6d8bf"));
        Companions found = Companions.of(print, 3, stash);
        assertThat(found.print().swatches().get(0).share()).isBetween(0.48, 0.52);
        assertThat(found.going()).extracting(m -> m.fabric().name()).containsExactlyInAnyOrder("harbour", "sand");
        assertThat(found.missing()).hasSize(1);
        assertThat(found.missing().get(0).colour().difference(Colour.hex("#b5452c"))).isLessThan(3);
        assertThat(found.show()).isInstanceOf(Exhibit.Several.class);
        Palette own = found.print();
        found.matches().forEach(m -> own.swatches().forEach(s -> assertThat(s.colour().difference(m.fabric().colour())).isGreaterThanOrEqualTo(m.difference() - 1e-9)));
    }
}
