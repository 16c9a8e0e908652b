package org.calicograph.notebook;

import java.util.Collection;
import java.util.regex.Pattern;

/**
 * What may name a cell: 1 to 64 letters, digits, hyphens and underscores of ASCII, a letter or digit
 * first, so that an id can also name a file.
 */
public final class CellId {

    private static final Pattern FORM = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,63}");
    private static final Pattern NUMBERED = Pattern.compile("a(\\d{1,9})");

    private CellId() { }

    public static boolean isValid(String id) {
        return FORM.matcher(id).matches();
    }

    /** @throws IllegalArgumentException if the text can't name a cell */
    public static String check(String id) {
        if (!isValid(id)) {
            throw new IllegalArgumentException("'" + Excerpt.of(id) + "' can't be the id of a cell; use 1 to 64 letters,"
                    + " digits, hyphens and underscores, a letter or digit first");
        }
        return id;
    }

    /** An id that none of these has, past the highest: a1, a2, a3. */
    public static String after(Collection<String> taken) {
        long highest = 0;
        for (String id : taken) {
            var m = NUMBERED.matcher(id);
            if (m.matches()) {
                highest = Math.max(highest, Long.parseLong(m.group(1)));
            }
        }
        return "a" + (highest + 1);
    }
}
