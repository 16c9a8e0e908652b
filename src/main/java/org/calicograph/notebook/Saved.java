package org.calicograph.notebook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.calicograph.drawing.Exhibit;

/**
 * What a cell came to when it was last drawn.
 *
 * @param key     {@link #key} of the texts and dials it was drawn from
 * @param exhibit what it showed; {@link Exhibit#NOTHING} if it showed nothing or failed
 * @param output  what it printed
 * @param failure why it failed; empty if it did not
 * @param unknown fields of the file that this version doesn't know
 */
public record Saved(String key, Exhibit exhibit, String output, Optional<String> failure, Json.Obj unknown) {

    public static Saved shown(String key, Exhibit exhibit, String output) {
        return new Saved(key, exhibit, output, Optional.empty(), Json.Obj.EMPTY);
    }

    public static Saved failed(String key, String failure, String output) {
        return new Saved(key, Exhibit.NOTHING, output, Optional.of(failure), Json.Obj.EMPTY);
    }

    /** True if the result was drawn from just these texts and dials. */
    public boolean belongsTo(List<String> texts, Map<String, String> dials) {
        return key.equals(key(texts, dials));
    }

    /**
     * A digest (SHA-256, its first 32 hexadecimal digits) of what a result was drawn from.
     *
     * @param texts the cell's text, then the texts of the cells that it depends on, in order
     * @param dials the values of the dials, as text, that take part
     */
    public static String key(List<String> texts, Map<String, String> dials) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            texts.forEach(text -> add(digest, 't', text));
            new TreeMap<>(dials).forEach((name, value) -> {
                add(digest, 'd', name);
                add(digest, '=', value);
            });
            return HexFormat.of().formatHex(digest.digest()).substring(0, 32);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("this Java has no SHA-256, which every Java has to have", e);
        }
    }

    private static void add(MessageDigest digest, char mark, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((mark + "" + bytes.length + ":").getBytes(StandardCharsets.US_ASCII));
        digest.update(bytes);
    }
}
