package org.calicograph.desk.look;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class LettersTest {

    @Test
    void letters_and_what_holds_them_grow_and_edges_and_paddings_stay() {
        Letters twice = new Letters(200);
        assertThat(twice.sized(".pin { -fx-font-size: 11px; -fx-min-width: 20; -fx-max-height: 20; -fx-padding: 0 4 0 4; -fx-border-width: 2; -fx-background-radius: 10; }"))
                .isEqualTo(".pin { -fx-font-size: 22px; -fx-min-width: 40; -fx-max-height: 40; -fx-padding: 0 4 0 4; -fx-border-width: 2; -fx-background-radius: 20; }");
        assertThat(twice.sized("(from 0px 0px to 0px 20px, repeat, x 2.5%) (from 0px 0px to 20px 0px, repeat)"))
                .isEqualTo("(from 0px 0px to 0px 40px, repeat, x 2.5%) (from 0px 0px to 40px 0px, repeat)");
        assertThat(new Letters(130).sized("-fx-font-size: 12.5px; -fx-fixed-cell-size: 26;")).isEqualTo("-fx-font-size: 16.25px; -fx-fixed-cell-size: 33.80;");
    }

    @Test
    void every_size_of_letters_in_the_style_sheet_becomes_what_it_is_times_the_factor() throws Exception {
        String sheet;
        try (InputStream in = LettersTest.class.getResourceAsStream("/org/calicograph/desk/desk.css")) {
            sheet = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        for (int percent : Letters.STEPS) {
            List<Double> before = sizes(sheet);
            List<Double> after = sizes(new Letters(percent).sized(sheet));
            assertThat(before).hasSizeGreaterThan(20);
            assertThat(after).hasSameSizeAs(before);
            for (int i = 0; i < before.size(); i++) {
                assertThat(after.get(i)).isCloseTo(before.get(i) * percent / 100, org.assertj.core.api.Assertions.within(0.006));
            }
        }
    }

    private static List<Double> sizes(String sheet) {
        List<Double> all = new ArrayList<>();
        Matcher m = Pattern.compile("-fx-font-size:\\s*([0-9.]+)").matcher(sheet);
        while (m.find()) {
            all.add(Double.parseDouble(m.group(1)));
        }
        return all;
    }

    @Test
    void steps_go_from_80_to_200_percent_and_no_further() {
        Letters letters = Letters.PLAIN;
        for (int i = 0; i < 20; i++) {
            letters = letters.step(1);
        }
        assertThat(letters.percent()).isEqualTo(200);
        assertThat(letters.step(-20).percent()).isEqualTo(80);
        assertThat(Letters.near("97").percent()).isEqualTo(100);
        assertThat(Letters.near("900").percent()).isEqualTo(200);
        assertThat(Letters.near("large")).isEqualTo(Letters.PLAIN);
        assertThatThrownBy(() -> new Letters(99)).hasMessageContaining("99 %").hasMessageContaining("use one of");
    }
}
