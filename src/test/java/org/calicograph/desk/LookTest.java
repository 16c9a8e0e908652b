package org.calicograph.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** By day and by night every ink can be read on every ground that it is laid on. */
class LookTest {

    /** WCAG 2.1, success criterion 1.4.3: letters need a contrast of at least 4.5 to 1. */
    private static final double LEAST = 4.5;

    private static final Map<String, List<String>> GROUNDS_OF = Map.ofEntries(
            Map.entry("ink", List.of("ground", "paper", "sunk", "lead-pale", "warn-pale", "older-pale", "graph-ground")),
            Map.entry("quiet", List.of("ground", "paper", "sunk", "warn-pale")),
            Map.entry("faint", List.of("paper", "graph-ground")),
            Map.entry("lead", List.of("ground", "paper", "sunk", "graph-ground", "lead-pale")),
            Map.entry("on-lead", List.of("lead")),
            Map.entry("warn", List.of("paper", "warn-pale")),
            Map.entry("older", List.of("paper", "sunk", "graph-ground", "older-pale")),
            Map.entry("flannel-ink", List.of("flannel")),
            Map.entry("code-keyword", List.of("graph-ground")),
            Map.entry("code-type", List.of("graph-ground")),
            Map.entry("code-number", List.of("graph-ground")),
            Map.entry("code-text", List.of("graph-ground")),
            Map.entry("code-remark", List.of("graph-ground")),
            Map.entry("code-call", List.of("graph-ground")));

    private static String sheet(String name) throws IOException {
        try (InputStream in = LookTest.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Map<String, Integer> colours(String name) throws IOException {
        Map<String, Integer> colours = new HashMap<>();
        Matcher m = Pattern.compile("-([a-z-]+): #([0-9a-f]{6});").matcher(sheet(name));
        while (m.find()) {
            colours.put(m.group(1), Integer.parseInt(m.group(2), 16));
        }
        return colours;
    }

    /** Relative luminance as WCAG 2.1 defines it. */
    private static double luminance(int rgb) {
        double[] parts = new double[3];
        for (int i = 0; i < 3; i++) {
            double c = (rgb >> 16 - 8 * i & 255) / 255.0;
            parts[i] = c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    private static double contrast(int one, int other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    @ParameterizedTest
    @ValueSource(strings = {"day.css", "night.css"})
    void every_ink_has_enough_contrast_on_its_grounds(String look) throws IOException {
        Map<String, Integer> colours = colours(look);
        List<String> faults = new ArrayList<>();
        GROUNDS_OF.forEach((ink, grounds) -> grounds.forEach(ground -> {
            double contrast = contrast(colours.get(ink), colours.get(ground));
            if (contrast < LEAST) {
                faults.add(ink + " on " + ground + String.format(": %.2f", contrast));
            }
        }));
        assertThat(faults).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"day.css", "night.css"})
    void every_colour_that_the_desk_uses_is_given(String look) throws IOException {
        Map<String, Integer> colours = colours(look);
        Matcher m = Pattern.compile("(?<![a-z-])-(?!fx-|rtfx-)([a-z]+(?:-[a-z]+)*)(?=[ ,;])").matcher(sheet("desk.css").replaceAll("/\\*.*?\\*/", ""));
        List<String> missing = new ArrayList<>();
        while (m.find()) {
            if (!colours.containsKey(m.group(1))) {
                missing.add(m.group(1));
            }
        }
        assertThat(missing).isEmpty();
    }

    /** What is written over a ground through a veil has less contrast than its colour has: only what holds no letters that matter may be veiled. */
    @org.junit.jupiter.api.Test
    void no_letters_are_made_paler_by_opacity() throws IOException {
        Matcher m = Pattern.compile("([^{}]+)\\{[^}]*-fx-opacity").matcher(sheet("desk.css").replaceAll("/\\*.*?\\*/", ""));
        List<String> veiled = new ArrayList<>();
        while (m.find()) {
            for (String selector : m.group(1).strip().split(",")) {
                // Success criterion 1.4.3 leaves out what can't be used at present.
                if (!selector.matches(".*(:disabled|\\.picture|\\.thumb|\\.small-picture|\\.nail-shadow)\\s*")) {
                    veiled.add(selector.strip());
                }
            }
        }
        assertThat(veiled).isEmpty();
    }
}
