package org.calicograph.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The main job on real input: the product's own medallion, from its file to pictures and tables. */
class HarbourLightTest {

    @TempDir
    private Path out;

    @Test
    void harbour_light_comes_out_as_a_medallion_that_covers_a_queen_bed() throws IOException {
        StringWriter told = new StringWriter();
        int code = Main.run(new String[] {"draw", "notebooks/harbour-light.json", "--out", out.toString(), "--quiet"},
                new PrintWriter(told, true), new PrintWriter(told, true));
        assertThat(code).as(told.toString()).isZero();

        JsonNode report = new ObjectMapper().readTree(out.resolve("report.json").toFile());
        assertThat(report.get("cells")).isNotEmpty().allSatisfy(cell -> {
            assertThat(cell.get("state").asText()).isEqualTo("drawn");
            cell.get("files").forEach(f -> assertThat(out.resolve(f.asText())).exists());
        });
        String svg = Files.readString(out.resolve("c14.svg"));
        assertThat(count(svg, "<title>[^<]* finished</title>")).isGreaterThanOrEqualTo(400);
        for (String border : new String[] {"border2", "border3", "border4"}) {
            assertThat(svg).as("the pieced " + border).contains("id=\"" + border + "-top1-");
        }
        // A queen mattress is 60 x 80 in; the notebook asks for a drop of 12 in.
        assertThat(Files.readString(out.resolve("c15.txt"))).contains("it covers the queen bed with a drop of 12");
        Matcher size = Pattern.compile("<svg[^>]* width=\"([0-9.]+)in\" height=\"([0-9.]+)in\"").matcher(svg);
        assertThat(size.find()).isTrue();
        assertThat(Double.parseDouble(size.group(1))).isBetween(86.6, 90.0);
        assertThat(Double.parseDouble(size.group(2))).isBetween(98.9, 102.0);
    }

    private static long count(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().count();
    }
}
