package org.calicograph.stranger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Somebody who was never told our code. From the printed words of a booklet alone she buys the cloth, cuts it, counts
 * every pile, sews what the steps say, and writes down whatever she could not do.
 */
final class Stranger {

    private static final List<String> SHOPPING = List.of("Fabric", "Buy", "Pieces", "What it is for");
    private static final List<String> STRIPS = List.of("Strips", "Width", "Cut", "Each strip gives");
    private static final List<String> PIECES = List.of("Piece", "Pieces", "Shape", "Finished", "Cut from", "Exact", "How");
    private static final String L = "(" + Measure.LENGTH + ")";
    private static final double HEADING = 14;
    /** What may lie between an exact size and the one that is printed, in inches: a 64th and half a hundredth. */
    private static final double PRINTED = 1.0 / 64 + 0.005;

    /** A pile of pieces, as the cutting list has it. */
    private record Pile(String letter, String cloth, int count, String shape, String finished, String from, String how) { }

    private final List<Printed.Words> words;
    private final List<String> defects = new ArrayList<>();
    private final Map<String, Double> bought = new LinkedHashMap<>();
    private final Map<String, Pile> piles = new LinkedHashMap<>();
    private final Map<String, Double> areas = new HashMap<>();
    /** How far a printed finished size, to the hundredth or the sixteenth, can leave an area in doubt. */
    private final Map<String, Double> doubts = new HashMap<>();
    private double seam;
    private String made = "";
    private double madeWidth;
    private double madeHeight;

    private Stranger(byte[] pdf) {
        words = Printed.read(pdf);
    }

    /** Works through a booklet from its first page to its last. */
    static Stranger with(byte[] pdf) {
        Stranger s = new Stranger(pdf);
        s.shop();
        s.cut();
        s.sew();
        return s;
    }

    /** What she could not do, or what did not agree; nothing if all went well. */
    List<String> defects() {
        return List.copyOf(defects);
    }

    /** Pieces on all piles. */
    int pieces() {
        return piles.values().stream().filter(p -> p.letter().length() <= 2).mapToInt(Pile::count).sum();
    }

    double width() {
        return madeWidth - 2 * seam;
    }

    double height() {
        return madeHeight - 2 * seam;
    }

    /** Finished square inches of a cloth, as far as the shapes can be reckoned; not a number where one can't. */
    Map<String, Double> areas() {
        Map<String, Double> all = new TreeMap<>();
        for (Pile p : piles.values()) {
            if (!p.finished().isEmpty()) {
                all.merge(p.cloth(), p.count() * areas.getOrDefault(p.letter(), Double.NaN), Double::sum);
            }
        }
        return all;
    }

    private void require(boolean good, String what) {
        if (!good) {
            defects.add(what);
        }
    }

    private void shop() {
        for (int i = 0; i < words.size(); i++) {
            if (Columns.isHead(words, i, SHOPPING) && bought.isEmpty()) {
                for (Map<String, String> row : Columns.under(words, i, SHOPPING, ".+")) {
                    bought.put(row.get("Fabric"), Measure.of(row.get("Buy")));
                }
            }
            Matcher m = Pattern.compile("All sizes are for " + L + " seams\\..*").matcher(words.get(i).text());
            if (m.matches()) {
                seam = Measure.of(m.group(1));
            }
        }
        require(!bought.isEmpty(), "I found no list of what to buy");
        require(seam > 0, "nobody says how wide the seams are");
    }

    // ---- cutting

    private void cut() {
        String cloth = "";
        Map<String, Integer> blanks = new HashMap<>();
        double along = 0;
        double across = 0;
        double usable = 0;
        for (int i = 0; i < words.size(); i++) {
            Printed.Words w = words.get(i);
            Matcher heading = Pattern.compile("(.+): (" + Measure.LENGTH + ")").matcher(w.text());
            if (Math.abs(w.size() - HEADING) < 0.1 && heading.matches() && bought.containsKey(heading.group(1))) {
                cloth = heading.group(1);
                blanks = new HashMap<>();
                require(Math.abs(bought.get(cloth) - Measure.of(heading.group(2))) < 1e-6, cloth + ": the heading and the shopping list disagree");
                usable = usableAfter(i);
                along = 0;
                across = 0;
            } else if (Columns.isHead(words, i, STRIPS) && !cloth.isEmpty() && blanks.isEmpty()) {
                for (Map<String, String> row : Columns.under(words, i, STRIPS, "\\d+")) {
                    int n = Integer.parseInt(row.get("Strips"));
                    double wide = Measure.of(row.get("Width"));
                    String way = row.get("Cut");
                    Matcher length = Pattern.compile(".*, " + L).matcher(way);
                    double strip = length.matches() ? Measure.of(length.group(1)) : usable;
                    across += way.startsWith("across the cloth") ? n * wide : 0;
                    along = Math.max(along, way.startsWith("along") ? strip : 0);
                    strip(cloth, row.get("Each strip gives"), n, wide, strip, blanks);
                }
                require(across + along <= bought.get(cloth) + 1e-6, cloth + ": the strips take " + (across + along) + " in, but " + bought.get(cloth) + " in are bought");
            } else if (Columns.isHead(words, i, PIECES) && !cloth.isEmpty()) {
                for (Map<String, String> row : Columns.under(words, i, PIECES, "[A-Z]{1,2}|binding|backing|sleeve")) {
                    Pile pile = new Pile(row.get("Piece"), cloth, Integer.parseInt(row.get("Pieces")), row.get("Shape"), row.getOrDefault("Finished", ""),
                            row.get("Cut from"), row.getOrDefault("How", ""));
                    if (pile.letter().length() > 2) {
                        continue;
                    }
                    require(piles.put(pile.letter(), pile) == null, "two piles are called " + pile.letter());
                    found(pile, blanks);
                    area(pile);
                }
                cloth = "";
            }
        }
        for (String each : bought.keySet()) {
            String name = each;
            require(piles.values().stream().anyMatch(p -> p.cloth().equals(name)) || printed("For the (binding|backing|sleeve)\\."), "nothing is cut from " + each);
        }
    }

    private boolean printed(String pattern) {
        return words.stream().anyMatch(w -> w.text().matches(pattern));
    }

    private double usableAfter(int from) {
        for (int i = from; i < words.size(); i++) {
            Matcher m = Pattern.compile(L + " usable width").matcher(words.get(i).text());
            if (m.matches()) {
                return Measure.of(m.group(1));
            }
        }
        require(false, "nobody says how wide the cloth is");
        return 0;
    }

    /** Cuts one kind of strip up: nothing may reach beyond its end or its edge. */
    private void strip(String cloth, String gives, int strips, double wide, double length, Map<String, Integer> blanks) {
        double used = 0;
        boolean drawn = gives.endsWith("; as drawn");
        double area = 0;
        for (String item : gives.replace("; as drawn", "").split("; ")) {
            Matcher m = Pattern.compile("(\\d+) (\\S+) of " + L + "(?: x " + L + ")?(?:, trimmed to " + L + ")?(?:, (\\d+) of " + L + " from each)?").matcher(item);
            if (!m.matches()) {
                require(false, cloth + ": I can't read '" + item + "'");
                continue;
            }
            int n = Integer.parseInt(m.group(1));
            double every = Measure.of(m.group(3));
            int pile = m.group(6) == null ? 1 : Integer.parseInt(m.group(6));
            double high = m.group(4) != null ? Measure.of(m.group(4)) : m.group(5) != null ? Measure.of(m.group(5)) : m.group(7) != null ? Measure.of(m.group(7)) : wide;
            used += n * every / pile;
            area += n * every * high;
            require(n % pile == 0, cloth + ": " + item + " leaves a piece that was cut off half used");
            require(drawn || pile * high <= wide + 1e-6, cloth + ": " + item + " is higher than its strip of " + wide);
            for (String name : m.group(2).split("\\+")) {
                blanks.merge(name + " " + size(every, high), n * strips, Integer::sum);
            }
        }
        require(drawn ? area <= wide * length + 1e-6 : used <= length + 1e-6, cloth + ": a strip of " + length + " in can't give " + gives);
    }

    private static String size(double a, double b) {
        return Math.round(Math.min(a, b) * 128) + "x" + Math.round(Math.max(a, b) * 128);
    }

    /** The pile's pieces are among what the strips gave. */
    private void found(Pile p, Map<String, Integer> blanks) {
        Matcher squares = Pattern.compile("(\\d+) squares?, " + L).matcher(p.from());
        Matcher each = Pattern.compile("(\\d+) of " + L + "(?: x " + L + ")?").matcher(p.from());
        Matcher ends = Pattern.compile("(\\d+) strips?, " + L + " x " + L).matcher(p.from());
        if (p.how().startsWith("First join") && ends.matches()) {
            joined(p, Measure.of(ends.group(2)), Measure.of(ends.group(3)));
        } else if (squares.matches()) {
            int n = Integer.parseInt(squares.group(1));
            int per = p.how().contains("four triangles") ? 4 : p.how().contains("one triangle of") ? 1 : 2;
            require(n * per >= p.count() && (n - 1) * per < p.count(), p.letter() + ": " + n + " squares don't give " + p.count());
            count(p, n, size(Measure.of(squares.group(2)), Measure.of(squares.group(2))), blanks);
        } else if (each.matches() && p.how().startsWith("First join")) {
            joined(p, Measure.of(each.group(2)), each.group(3) == null ? 0 : Measure.of(each.group(3)));
        } else if (each.matches()) {
            double w = Measure.of(each.group(2));
            require(Integer.parseInt(each.group(1)) == p.count(), p.letter() + ": " + p.from() + " for " + p.count() + " pieces");
            count(p, p.count(), size(w, each.group(3) == null ? w : Measure.of(each.group(3))), blanks);
        } else if (p.from().startsWith("template ")) {
            int n = blanks.entrySet().stream().filter(b -> b.getKey().startsWith(p.letter() + " ")).mapToInt(Map.Entry::getValue).sum();
            require(n >= p.count(), p.letter() + ": " + n + " rectangles for " + p.count() + " pieces by template");
        } else {
            Matcher strips = Pattern.compile("(\\d+) strips?(?: of (?:up to )?(\\d+))?, (.*)").matcher(p.from());
            require(strips.matches(), p.letter() + ": I can't read '" + p.from() + "'");
            if (strips.matches()) {
                int n = blanks.entrySet().stream().filter(b -> b.getKey().startsWith(p.letter() + " ")).mapToInt(Map.Entry::getValue).sum();
                int most = strips.group(2) == null ? 1 : Integer.parseInt(strips.group(2));
                require(n == Integer.parseInt(strips.group(1)), p.letter() + ": " + n + " strips in one list, " + strips.group(1) + " in the other");
                require(n * most >= p.count(), p.letter() + ": " + p.from() + " don't give " + p.count());
                require(!strips.group(3).startsWith("template") || strips.group(3).equals("template " + p.letter()) && p.how().contains("Trace it along the strip as drawn"),
                        p.letter() + ": nobody says how the template is laid on '" + p.from() + "'");
            }
        }
    }

    private void count(Pile p, int wanted, String size, Map<String, Integer> blanks) {
        int got = blanks.getOrDefault(p.letter() + " " + size, 0);
        require(got == wanted, p.letter() + ": the strips give " + got + ", the list asks for " + wanted + " (" + p.from() + ")");
    }

    /** Joined from strips: the parts, less the seams between them, are as long as the piece. */
    private void joined(Pile p, double a, double b) {
        double length = Math.max(a, b);
        boolean diagonal = p.how().contains("diagonal");
        double lost = diagonal ? Math.min(a, b) : 2 * seam;
        int pieces = 0;
        String list = p.how().replaceFirst("First join strips with \\w+ seams: ", "").replaceFirst("\\. .*", "");
        for (String one : list.split("; ")) {
            Matcher many = Pattern.compile("(\\d+) of (.* in.*)").matcher(one);
            boolean several = many.matches();
            String[] parts = (several ? many.group(2) : one).split(" \\+ ");
            double sum = 0;
            for (String part : parts) {
                sum += Measure.of(part);
            }
            pieces += several ? Integer.parseInt(many.group(1)) : 1;
            require(sum - (parts.length - 1) * lost >= length - 1e-6, p.letter() + ": " + one + " is too short for " + length);
        }
        require(pieces == p.count(), p.letter() + ": " + pieces + " joined pieces for " + p.count());
    }

    private void area(Pile p) {
        Matcher m = Pattern.compile(L + " x " + L).matcher(p.finished());
        if (!m.matches()) {
            return;
        }
        double box = Measure.of(m.group(1)) * Measure.of(m.group(2));
        doubts.put(p.letter(), 0.006 * (Measure.of(m.group(1)) + Measure.of(m.group(2))));
        switch (p.shape()) {
            case "square", "rectangle" -> areas.put(p.letter(), box);
            case "half-square triangle", "quarter-square triangle" -> areas.put(p.letter(), box / 2);
            default -> { }
        }
    }

    // ---- sewing

    private void sew() {
        Map<String, Integer> used = new HashMap<>();
        Map<String, Integer> stages = new LinkedHashMap<>();
        Map<String, Integer> taken = new HashMap<>();
        Map<String, Double> known = new HashMap<>(areas);
        Map<String, Double> unsure = new HashMap<>(doubts);
        Map<String, Integer> wanted = new HashMap<>();
        Map<String, Integer> left = new LinkedHashMap<>();
        String stage = "";
        boolean sewing = false;
        for (int i = 0; i < words.size(); i++) {
            Printed.Words w = words.get(i);
            if (w.size() > 20 && w.bold()) {
                sewing = w.text().equals("Sewing");
            }
            if (!sewing) {
                continue;
            }
            Matcher heading = Pattern.compile("(.+): (make|lay) (\\d+)").matcher(w.text());
            if (Math.abs(w.size() - HEADING) < 0.1 && heading.matches()) {
                finished(stage, left);
                stage = heading.group(1);
                made = stage;
                require(stages.put(stage, Integer.parseInt(heading.group(3))) == null, "two things are called " + stage);
                left.clear();
                wanted.clear();
                if (heading.group(2).equals("lay")) {
                    stage = "";
                }
                continue;
            }
            if (!w.bold() || Math.abs(w.size() - 9) > 0.1 || !below(i, true).contains(" = ") || i > 0 && continues(i - 1, i, true)) {
                continue;
            }
            String title = below(i, true);
            String told = below(lineAfter(i), false);
            Matcher make = Pattern.compile("make (\\d+)(?:; " + L + " x " + L + ")?(;.*)?").matcher(told);
            if (!make.matches()) {
                require(false, stage + ": I can't read '" + told + "' under '" + title + "'");
                continue;
            }
            int times = Integer.parseInt(make.group(1));
            String name = title.substring(0, title.indexOf(" = "));
            double area = 0;
            double doubt = 0;
            for (String part : title.substring(title.indexOf(" = ") + 3).split(" \\+ ")) {
                Matcher many = Pattern.compile("(\\d+) × (.+)").matcher(part);
                boolean several = many.matches();
                int n = several ? Integer.parseInt(many.group(1)) : 1;
                String what = several ? many.group(2) : part;
                if (left.containsKey(what)) {
                    left.merge(what, -n * times, Integer::sum);
                } else if (piles.containsKey(what)) {
                    used.merge(what, n * times, Integer::sum);
                } else {
                    taken.merge(what, n * times, Integer::sum);
                }
                doubt += n * unsure.getOrDefault(left.containsKey(what) ? stage + "/" + what : what, 0.0);
                area += n * known.getOrDefault(left.containsKey(what) ? stage + "/" + what : what, Double.NaN);
            }
            left.put(name, times);
            known.put(name.equals(stage) ? stage : stage + "/" + name, area);
            unsure.put(name.equals(stage) ? stage : stage + "/" + name, doubt);
            if (make.group(2) != null) {
                madeWidth = Measure.of(make.group(2));
                madeHeight = Measure.of(make.group(3));
                double inside = (madeWidth - 2 * seam) * (madeHeight - 2 * seam);
                require(Double.isNaN(area) || Math.abs(inside - area) <= PRINTED * (madeWidth + madeHeight) + doubt,
                        stage + ", " + name + ": " + madeWidth + " x " + madeHeight + " in with seams, but its pieces cover " + area + " square inches");
            }
        }
        finished(stage, left);
        stages.forEach((name, n) -> require(name.equals(made) ? n == 1 : taken.getOrDefault(name, 0) == n,
                name + ": " + n + " are made, " + taken.getOrDefault(name, 0) + " are used"));
        taken.forEach((name, n) -> require(stages.containsKey(name), "nobody tells how " + name + " is made"));
        for (Pile p : piles.values()) {
            int n = used.getOrDefault(p.letter(), 0);
            require(n == p.count() || p.shape().equals("laid shape") || stages.isEmpty() && piles.size() == 1 || isGround(p, used),
                    p.letter() + ": " + p.count() + " are cut, " + n + " are sewn");
        }
    }

    /** A piece that is the whole ground of an appliqué is not sewn to anything by letter. */
    private boolean isGround(Pile p, Map<String, Integer> used) {
        return !used.containsKey(p.letter()) && words.stream().anyMatch(w -> w.text().matches(".+: lay " + p.count()));
    }

    /** Whatever was made for a block is in it; the block itself is what comes last. */
    private void finished(String stage, Map<String, Integer> left) {
        left.forEach((name, n) -> require(name.equals(stage) || n == 0, stage + ": " + name + " is made " + (n > 0 ? n + " times too often" : -n + " times too seldom")));
        require(stage.isEmpty() || left.isEmpty() || left.containsKey(stage), stage + ": no step makes it");
    }

    private int lineAfter(int at) {
        int i = at;
        while (i + 1 < words.size() && continues(at, i + 1, true)) {
            i++;
        }
        return i + 1;
    }

    /** A line and those that go on beneath it about the same middle. */
    private String below(int at, boolean bold) {
        if (at >= words.size()) {
            return "";
        }
        StringBuilder text = new StringBuilder(words.get(at).text());
        for (int i = at + 1; i < words.size() && continues(at, i, bold); i++) {
            text.append(' ').append(words.get(i).text());
        }
        return text.toString();
    }

    private boolean continues(int first, int i, boolean bold) {
        Printed.Words a = words.get(first);
        Printed.Words b = words.get(i);
        Printed.Words before = words.get(i - 1);
        return b.page() == a.page() && b.bold() == bold && Math.abs(b.size() - a.size()) < 0.1 && Math.abs(b.middle() - a.middle()) < 2
                && b.y() > before.y() && b.y() - before.y() < 15;
    }
}
