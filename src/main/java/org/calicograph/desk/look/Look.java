package org.calicograph.desk.look;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Set;
import javafx.scene.Scene;
import javafx.scene.text.Font;

/** Type and colours, by day and by night: cloth and paper, from style sheets of our own. */
public final class Look {

    private static final String SHEETS = "/org/calicograph/desk/";

    private static final String LETTERS = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final List<String> READING = List.of("Source Serif 4", "Source Serif Pro", "Charter", "Georgia", "Noto Serif", "Liberation Serif");
    private static final List<String> PLAIN = List.of("Source Sans 3", "Source Sans Pro", "Inter", "Segoe UI", "Helvetica Neue", "Noto Sans");
    private static final List<String> CODE = List.of("JetBrains Mono", "Source Code Pro", "Cascadia Mono", "SF Mono", "Menlo", "Consolas",
            "DejaVu Sans Mono", "Liberation Mono", "Noto Sans Mono");

    private Look() { }

    /** Dresses a window; may be called again for the other look, or for letters of another size. */
    public static void dress(Scene scene, boolean night, Letters letters) {
        scene.getStylesheets().setAll(sheet(night ? "night.css" : "day.css"), sized("desk.css", letters), typefaces());
    }

    private static String sheet(String name) {
        return Look.class.getResource(SHEETS + name).toExternalForm();
    }

    /** The sheet itself where nothing is to be sized: what is read from its place is kept by the toolkit. */
    private static String sized(String name, Letters letters) {
        if (letters.equals(Letters.PLAIN)) {
            return sheet(name);
        }
        try (InputStream in = Look.class.getResourceAsStream(SHEETS + name)) {
            return inline(letters.sized(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String inline(String css) {
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
    }

    private static String typefaces() {
        String letters = "System";
        try (InputStream in = Look.class.getResourceAsStream(LETTERS)) {
            Font font = in == null ? null : Font.loadFont(in, 14);
            letters = font == null ? letters : font.getFamily();
        } catch (java.io.IOException e) {
            // The system's own letters serve as well.
        }
        Set<String> there = Set.copyOf(Font.getFamilies());
        String otherwise = letters;
        String plain = PLAIN.stream().filter(there::contains).findFirst().orElse(otherwise);
        String reading = READING.stream().filter(there::contains).findFirst().orElse(plain);
        String code = CODE.stream().filter(there::contains).findFirst().orElse("Monospaced");
        String css = ".root { -fx-font-family: \"" + plain + "\"; }\n.prose .word, .prose .list-mark { -fx-font-family: \"" + reading
                + "\"; }\n.code, .code .text, .code-word { -fx-font-family: \"" + code + "\"; }\n";
        return inline(css);
    }
}
