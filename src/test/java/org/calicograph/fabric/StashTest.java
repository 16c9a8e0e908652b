package org.calicograph.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.calicograph.colour.Colour;
import org.calicograph.measure.Area;
import org.calicograph.measure.Length;
import org.junit.jupiter.api.Test;

class StashTest {

    private static final String SHELF = """
            name,colour,print,direction,width,in hand,price
            sailcloth,#efe6d2,,,,,
            harbour blue,#2a5f99,small,two-way,42,1/2 yd,11.50 EUR per m
            "net, tarred",#2b2722,plain,any,40 in,120 sq in,
            """;

    @Test
    void a_stash_is_read_with_all_that_is_known_of_each_cloth() {
        Stash stash = Stash.read(SHELF);
        Fabric blue = stash.fabric("harbour blue");
        assertThat(blue.usableWidth()).isEqualTo(Length.inches(42));
        assertThat(blue.inHand()).isEqualTo(InHand.of(Length.inches(18)));
        assertThat(blue.areaInHand()).contains(new Area(18 * 42));
        assertThat(blue.print()).isEqualTo(Print.of(Print.Scale.SMALL).running(Print.Direction.TWO_WAY));
        assertThat(blue.price()).contains(Price.perMetre("11.50", "EUR"));
        assertThat(stash.fabric("net, tarred").areaInHand()).contains(new Area(120));
        assertThat(stash.fabric("sailcloth").areaInHand()).isEmpty();
        assertThat(stash.fabric("sailcloth").usableWidth()).isEqualTo(Length.inches(40));
    }

    @Test
    void what_is_written_is_read_back() {
        Stash stash = Stash.read(SHELF);
        assertThat(Stash.read(stash.csv())).isEqualTo(stash);
    }

    @Test
    void every_bad_row_is_named_with_its_line_and_the_good_ones_stay() {
        StashReading reading = StashReading.of("""
                name,colour,in hand,price,prnt
                tide,#2a5f99,-3 in,,
                foam,white,,,
                ,#aabbcc,,,
                kelp,#445522,a bit,,
                reed,#99aa55,,cheap,
                reef,#336655,2 yd,,
                reef,#336655,2 yd,,
                sand,#ddccaa,1,2,3,4
                """);
        assertThat(reading.stash().fabrics()).extracting(Fabric::name).containsExactly("reef");
        assertThat(reading.problems()).containsExactly(
                "line 1: there is no column 'prnt' in a stash; did you mean 'print', 'price', 'name'?",
                "line 2: 'tide': there can't be -3 in of a fabric; measure what is there, 0 if it is used up",
                "line 3: 'foam': 'white' is not a colour; write it like #1f3a5f",
                "line 4: the row has no name; give the fabric one",
                "line 5: 'kelp': 'a bit' is not a length; write it like 3, 3 1/8, 2.5, 20 cm or 6 mm",
                "line 6: 'reed': 'cheap' is not a price; write it like 11.50 EUR per m or 9 GBP per yd",
                "line 8: 'reef' stands in an earlier row too; name them apart",
                "line 9: the row has 6 fields under 5 headings; put a text that has commas in quotation marks");
        assertThatThrownBy(() -> Stash.read("name,in hand\ntide,3")).hasMessageStartingWith("the stash has no column 'colour'");
    }

    @Test
    void unknown_names_get_the_nearest_offered() {
        assertThatThrownBy(() -> Stash.read(SHELF).fabric("harbor blu"))
                .hasMessageStartingWith("there is no fabric 'harbor blu' in the stash; did you mean 'harbour blue'");
    }

    @Test
    void the_nearest_colour_and_the_nearest_darker_one_are_found() {
        Stash stash = Stash.of(Fabric.of("ink", "#14202e"), Fabric.of("slate", "#4a5a68"), Fabric.of("mist", "#c9d3d6"));
        assertThat(stash.nearest(Colour.hex("#50606e"))).map(Fabric::name).contains("slate");
        assertThat(stash.nearestDarker(Colour.hex("#4a5a68"), Colour.hex("#4a5a68"))).map(Fabric::name).contains("ink");
        assertThat(stash.nearestDarker(Colour.hex("#14202e"), Colour.BLACK)).isEmpty();
    }

    @Test
    void prices_are_for_the_length_they_name() {
        assertThat(Price.perYard("9", "GBP").of(Length.inches(12))).isEqualByComparingTo(new BigDecimal("3.00"));
        assertThatThrownBy(() -> Price.perYard("-1", "GBP")).hasMessage("a price is -1 GBP; use 0 or more");
        assertThatThrownBy(() -> Price.perYard("1", "pounds")).hasMessage("'pounds' is not a currency; use three letters, such as EUR");
    }

    @Test
    void impossible_cloth_is_refused() {
        assertThatThrownBy(() -> Fabric.of("tide", "#123456").wide(Length.ZERO))
                .hasMessage("'tide' has a usable width of 0 in; measure it between the selvedges, such as 40 in");
        assertThatThrownBy(() -> Fabric.of("tide", "#123456").inHand(new Area(Double.NaN))).hasMessageContaining("there can't be NaN sq in");
    }
}
