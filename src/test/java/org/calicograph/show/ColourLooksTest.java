package org.calicograph.show;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import org.calicograph.Golden;
import org.calicograph.colouring.Contrast;
import org.calicograph.colouring.RunningOut;
import org.calicograph.colouring.ValueStudy;
import org.calicograph.drawing.Exhibit;
import org.calicograph.drawing.Picture;
import org.calicograph.colour.Colour;
import org.calicograph.colour.ColourVision;
import org.calicograph.fabric.Fabric;
import org.calicograph.colour.HueReport;
import org.calicograph.fabric.Palette;
import org.calicograph.colour.Photo;
import org.calicograph.fabric.Ramp;
import org.calicograph.fabric.Role;
import org.calicograph.fabric.Stash;
import org.calicograph.colour.Wheel;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.calicograph.patchwork.Block;
import org.calicograph.patchwork.Patchwork;
import org.calicograph.setting.Setting;
import org.junit.jupiter.api.Test;

class ColourLooksTest {

    private static final Fabric BLUE = Fabric.of("harbour blue", "#2a5f99");
    private static final Fabric NAVY = Fabric.of("navy", "#1f3a5f");
    private static final Fabric CREAM = Fabric.of("cream", "#f3ecdd");
    private static final Fabric MIST = Fabric.of("mist", "#dfe3dc");

    private static Exhibit.Drawn drawn(Object value) {
        Exhibit exhibit = Show.of(value);
        return (Exhibit.Drawn) (exhibit instanceof Exhibit.Several several ? several.parts().get(0) : exhibit);
    }

    private static Patchwork top() {
        Block star = Block.onGrid("Star", 4, Length.inches(8))
                .square(Role.BACKGROUND, 0, 0, 1).gooseUp(1, 0, 1, Role.BACKGROUND, Role.DARK).turnedFourTimes()
                .square(Role.LIGHT, 1, 1, 2).block();
        return Setting.straight(3, 3).of(star).with(Map.of(Role.BACKGROUND, CREAM, Role.DARK, BLUE, Role.LIGHT, MIST));
    }

    private static long lettering(Picture picture) {
        return picture.flattened().stream().filter(p -> p instanceof Picture.Lettering).count();
    }

    @Test
    void a_wheel_is_three_rings_with_its_names_around() {
        Exhibit.Drawn wheel = drawn(Wheel.pigment());
        assertThat(wheel.caption()).isEqualTo("pigment wheel: tints outside, shades inside");
        assertThat(wheel.picture().flattened()).hasSize(12 * 4);
        Golden.picture("colour/pigment-wheel", wheel.picture());
        Golden.picture("colour/perceptual-wheel", drawn(Wheel.perceptual()).picture());
    }

    @Test
    void palettes_ramps_reports_and_the_stash_have_their_pictures() {
        Photo flag = Photo.drawn(10, 10, (x, y) -> y < 7 ? 0x1f3a5f : x < 5 ? 0xb5553c : 0xf3ecdd);
        Golden.picture("colour/palette", drawn(Palette.of(flag, 3)).picture());
        Golden.picture("colour/ramp", drawn(Ramp.through(Colour.hex("#2a5f99"), 7)).picture());
        Golden.picture("colour/hue-report", drawn(HueReport.of(Wheel.pigment())).picture());
        Exhibit.Drawn stash = drawn(Stash.of(BLUE.inHand(Length.inches(18)), NAVY, CREAM, MIST, Fabric.of("rust", "#b5553c").inHand(new Area(120))));
        assertThat(lettering(stash.picture())).isEqualTo(10);
        Golden.picture("colour/stash", stash.picture());
    }

    @Test
    void a_fabric_says_all_that_is_known_of_it() {
        assertThat(drawn(BLUE.inHand(Length.inches(18)).wide(Length.inches(42))).caption())
                .isEqualTo("harbour blue, #2a5f99, value 40; 42 in wide, 18 in off the bolt");
        assertThat(Show.of(Optional.of(BLUE))).isInstanceOf(Exhibit.Drawn.class);
    }

    @Test
    void studies_of_a_top_have_their_pictures() {
        Golden.picture("colour/value-study", drawn(ValueStudy.of(top())).picture());
        Exhibit.Drawn contrast = drawn(Contrast.of(top(), ColourVision.DEUTERANOPIA));
        assertThat(contrast.caption()).startsWith("With deuteranopia: 36 weak seams");
        Golden.picture("colour/weak-seams", contrast.picture());
        Golden.picture("colour/running-out", drawn(RunningOut.of(top(), Stash.of(BLUE.inHand(new Area(150)), NAVY, CREAM, MIST)).solve()).picture());
    }
}
