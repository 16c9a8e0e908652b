package org.calicograph.fabric;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Names that somebody may have meant, by how few letters must change (Levenshtein). */
public final class NearestNames {

    private static final int OFFERED = 3;

    private NearestNames() { }

    /** Up to three names, the likeliest first. */
    public static List<String> to(String wanted, Collection<String> names) {
        String w = wanted.toLowerCase(Locale.ROOT).trim();
        return names.stream().sorted(Comparator.<String>comparingDouble(n -> distance(w, n.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder())).limit(OFFERED).toList();
    }

    /** ' Did you mean ...?', or nothing where there are no names. */
    public static String question(String wanted, Collection<String> names) {
        List<String> near = to(wanted, names);
        return near.isEmpty() ? "" : "; did you mean '" + String.join("', '", near) + "'?";
    }

    /** ' Did you mean ...?' where a name is so near that it may well have been meant, and otherwise nothing. */
    public static String likely(String wanted, Collection<String> names) {
        String w = wanted.toLowerCase(Locale.ROOT).trim();
        double most = w.length() < 4 ? 1 : w.length() < 8 ? 2 : 3;
        List<String> near = to(wanted, names).stream().filter(n -> distance(w, n.toLowerCase(Locale.ROOT)) <= most).toList();
        return near.isEmpty() ? "" : ". Did you mean '" + String.join("' or '", near) + "'?";
    }

    private static double distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int up = row[j];
                int change = corner + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(up, row[j - 1]));
                corner = up;
            }
        }
        boolean within = b.contains(a) || a.contains(b);
        return within ? row[b.length()] * 0.5 : row[b.length()];
    }
}
