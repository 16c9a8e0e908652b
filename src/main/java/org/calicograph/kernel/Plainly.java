package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import jdk.jshell.Diag;
import org.calicograph.kernel.numbers.WholeDivision;
import org.calicograph.kernel.plain.CompilerWords;
import org.calicograph.wire.Catalogue;
import org.calicograph.wire.Place;
import org.calicograph.wire.Problem;

/** A compiler's objections in plain words: what is wrong, and what would mend it where that can be told. */
final class Plainly {

    private static final Pattern CONVERT = Pattern.compile("incompatible types: (?:possible lossy conversion from )?(.+?) (?:cannot be converted )?to (.+)");
    private static final Pattern APPLY = Pattern.compile("(?s)(?:method|constructor) (\\w+) in (?:class|record|interface|enum) ([\\w.<>,]+) cannot be applied to given types;"
            + ".*?required:(.*?)found:(.*?)reason:.*");
    private static final Pattern NONE_SUITS = Pattern.compile("no suitable (?:method|constructor) found for (\\w+)\\((.*)\\)");
    private static final Pattern NOT_THIS = Pattern.compile("(?m)^\\s*(?:method|constructor) (\\S+)\\.(?:<[^>]*>)?(\\w+)\\((.*)\\) is not applicable");
    private static final Pattern NO_PACKAGE = Pattern.compile("package ([\\w.]+) does not exist");
    private static final Pattern EXPECTED = Pattern.compile("(.+) expected");
    private static final int NEAR = 2;

    private final Stdlib stdlib;

    /** Knows the names of the house, to tell near ones. */
    Plainly(Stdlib stdlib) {
        this.stdlib = stdlib;
    }

    /**
     * An objection with its places in the cell.
     *
     * @param names those that cells declare
     */
    Problem problem(Diag diag, Piece piece, String text, Set<String> names) {
        // Where the compiler points, which in a long chain of calls may be lines behind its start.
        long from = Math.max(0, diag.getPosition() < 0 ? diag.getStartPosition() : diag.getPosition());
        long to = Math.max(from, diag.getEndPosition());
        // A position behind the piece is one that JShell's own wrapping added: the end of the piece.
        int most = Math.min(text.length(), piece.offset() + piece.source().length());
        int start = (int) Math.min(most, piece.offset() + from);
        if (start == most) {
            while (start > piece.offset() && Character.isWhitespace(text.charAt(start - 1))) {
                start--;
            }
        }
        int end = (int) Math.max(start, Math.min(most, piece.offset() + to));
        Matcher lost = NO_PACKAGE.matcher(diag.getMessage(Locale.ENGLISH));
        if (lost.matches()) {
            // Compilers differ in where they point; the name itself is what is read.
            int at = text.lastIndexOf(lost.group(1), start);
            at = at < piece.offset() ? text.indexOf(lost.group(1), piece.offset()) : at;
            if (at >= 0 && at + lost.group(1).length() <= most) {
                start = at;
                end = at + lost.group(1).length();
            }
        }
        return new Problem(Place.of(text, start), Place.of(text, end), words(diag.getMessage(Locale.ENGLISH), names));
    }

    /** Divisions of whole numbers where a fraction is wanted. */
    static List<Problem> divisions(List<WholeDivision.Found> found, int offset, String text) {
        return found.stream().map(f -> new Problem(Place.of(text, offset + f.from()), Place.of(text, offset + f.to()), f.message())).toList();
    }

    /** A name that a method or a type uses and nothing declares. */
    Problem unresolved(String name, Reader.Cut cut, String text, Set<String> names) {
        int[] at = word(name.replaceAll("\\(.*", "").replaceAll("^\\w+ ", ""), cut);
        return new Problem(Place.of(text, at[0]), Place.of(text, at[1]), unknown(name, names));
    }

    /** Where a word stands in a piece, in the cell's text; its beginning where it stands nowhere. */
    static int[] word(String word, Reader.Cut cut) {
        Matcher at = Pattern.compile("\\b" + Pattern.quote(word) + "\\b").matcher(cut.source());
        int from = cut.offset() + (at.find() ? at.start() : 0);
        return new int[] {from, from + word.length()};
    }

    String words(String message, Set<String> names) {
        if (message.startsWith("cannot find symbol")) {
            return missing(message, names);
        }
        String one = message.strip();
        String line = one.lines().findFirst().orElse("does not compile");
        Matcher apply = APPLY.matcher(one);
        if (apply.matches() && hidden(bare(apply.group(2)), apply.group(1))) {
            return absent(apply.group(1), bare(apply.group(2)));
        }
        if (apply.matches()) {
            Set<String> ways = ways(bare(apply.group(2)), apply.group(1));
            String required = ways.isEmpty() ? "(" + bare(apply.group(3)).replace("no arguments", "").replace(",", ", ") + ")" : String.join(" or ", ways);
            String found = bare(apply.group(4)).replace("no arguments", "").replace(",", ", ");
            return apply.group(1) + " takes " + required + ", and here it is given (" + found + ").";
        }
        Matcher none = NONE_SUITS.matcher(line);
        if (none.matches()) {
            Set<String> ways = new LinkedHashSet<>();
            Matcher each = NOT_THIS.matcher(one);
            while (each.find()) {
                Set<String> named = ways(bare(each.group(1)), each.group(2));
                ways.addAll(named.isEmpty() ? Set.of("(" + bare(each.group(3)).replace(",", ", ") + ")") : named);
            }
            String given = none.group(2).equals("no arguments") ? "" : bare(none.group(2)).replace(",", ", ");
            return none.group(1) + " can't be given (" + given + ")." + (ways.isEmpty() ? "" : " It takes " + String.join(" or ", ways) + ".");
        }
        Matcher convert = CONVERT.matcher(line);
        if (convert.matches()) {
            return "This is " + a(bare(convert.group(1))) + " where " + a(bare(convert.group(2))) + " is wanted."
                    + repair(bare(convert.group(1)), bare(convert.group(2))) + " (Java: incompatible types)";
        }
        Optional<String> plain = CompilerWords.plain(line);
        if (plain.isPresent()) {
            return plain.get();
        }
        Matcher expected = EXPECTED.matcher(line);
        if (expected.matches()) {
            return "Java expects " + expected.group(1).replace("<identifier>", "a name") + " here.";
        }
        return line;
    }

    private String missing(String message, Set<String> names) {
        String symbol = "";
        String location = "";
        for (String line : message.split("\n")) {
            String l = line.strip();
            symbol = l.startsWith("symbol:") ? l.substring(7).strip() : symbol;
            location = l.startsWith("location:") ? l.substring(9).strip() : location;
        }
        symbol = symbol.replaceAll("\\s+", " ");
        if (location.isEmpty() || location.equals("class")) {
            return unknown(symbol, names);
        }
        String type = bare(location.replaceAll(".* of type ", "").replaceAll("^(?:class|interface|record|enum) ", "")).replaceAll("<.*", "");
        return "There is no " + symbol + " in " + bare(location) + "." + near(symbol, members(type));
    }

    /** Names of what can be called on a type of the house; none of another. */
    private Set<String> members(String type) {
        Set<String> members = new LinkedHashSet<>();
        house(type).ifPresent(kind -> {
            for (java.lang.reflect.Method method : kind.getMethods()) {
                members.add(method.getName());
            }
            for (java.lang.reflect.Field field : kind.getFields()) {
                members.add(field.getName());
            }
        });
        return members;
    }

    /** True of a method of the house that is there, and not for cells: the compiler speaks of what it takes all the same. */
    private boolean hidden(String type, String method) {
        Set<String> members = members(type.replaceAll("<.*", ""));
        return !members.isEmpty() && !method.equals(type) && !members.contains(method);
    }

    /** What a method of the house takes, by type and name, one for each of its forms; none of another's. */
    private Set<String> ways(String type, String method) {
        Set<String> ways = new LinkedHashSet<>();
        house(type.replaceAll("<.*", "")).ifPresent(kind -> {
            for (java.lang.reflect.Executable each : method.equals(kind.getSimpleName()) ? kind.getConstructors() : kind.getMethods()) {
                if (each.getName().equals(method) || each instanceof java.lang.reflect.Constructor<?>) {
                    ways.add(java.util.Arrays.stream(each.getParameters()).map(p -> bare(p.getParameterizedType().getTypeName().replaceAll("\\$", ".")) + " " + p.getName())
                            .collect(java.util.stream.Collectors.joining(", ", "(", ")")));
                }
            }
        });
        return ways.stream().sorted(java.util.Comparator.comparingInt(String::length).thenComparing(w -> w)).collect(java.util.stream.Collectors.toCollection(LinkedHashSet::new));
    }

    private String absent(String method, String type) {
        return "There is no method " + method + " in " + type + "." + near(method, members(type.replaceAll("<.*", "")));
    }

    private String unknown(String symbol, Set<String> names) {
        Set<String> all = new LinkedHashSet<>(names);
        all.addAll(Imports.words());
        if (symbol.startsWith("class ") || symbol.startsWith("variable ") && Character.isUpperCase(symbol.charAt(9))) {
            all.addAll(Imports.types(stdlib));
        }
        String wanted = symbol.replaceAll("\\(.*", "").replaceAll("^.* ", "");
        for (Catalogue.Broken each : stdlib.broken()) {
            String name = java.nio.file.Path.of(each.file()).getFileName().toString();
            if (name.equals(wanted + ".java")) {
                return wanted + " can't be used: in " + name + ", line " + each.problem().from().line() + ", " + each.problem().message()
                        .replaceFirst("(?s)cannot find symbol\\s+symbol:\\s+\\w+ ([\\w.]+).*", "it uses $1, which is not to be had").replaceFirst("\\.$", "") + ".";
            }
        }
        String close = near(symbol, all);
        return close.isEmpty() ? "There is no " + symbol + " here. No cell, import or stdlib file declares it; look for a misspelling, or declare it."
                : "There is no " + symbol + " here." + close;
    }

    private Optional<Class<?>> house(String type) {
        for (String each : Imports.PACKAGES) {
            try {
                return Optional.of(Class.forName(each + "." + type, false, Plainly.class.getClassLoader()));
            } catch (ClassNotFoundException | LinkageError e) {
                continue; // in another package, or of a cell's own
            }
        }
        return Optional.empty();
    }

    /** What was perhaps meant. */
    private static String near(String symbol, Collection<String> names) {
        String wanted = symbol.replaceAll("\\(.*", "").replaceAll("^.* ", "");
        int most = wanted.length() < 4 ? 1 : NEAR;
        List<String> close = new ArrayList<>();
        int best = most;
        for (String name : names) {
            int far = wanted.equalsIgnoreCase(name) ? 0 : distance(wanted, name, most);
            if (far < best || far == best && close.isEmpty()) {
                close.clear();
                best = far;
            }
            if (far == best && far <= most && !name.equals(wanted) && !close.contains(name)) {
                close.add(name);
            }
        }
        return close.isEmpty() ? "" : " Did you mean " + String.join(" or ", close.subList(0, Math.min(3, close.size()))) + "?";
    }

    /** Letters to be put in, taken out, changed, or swapped with the next; more than the most is not counted. */
    static int distance(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) > most) {
            return most + 1;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(d[i - 1][j - 1] + change, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }

    private static String bare(String types) {
        return types.strip().replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "");
    }

    private static String a(String type) {
        return ("AEIOaeio".indexOf(type.charAt(0)) >= 0 ? "an " : "a ") + type;
    }

    private static String repair(String given, String wanted) {
        boolean number = given.equals("int") || given.equals("double") || given.equals("long");
        if (number && wanted.equals("Length")) {
            return " Say in what: inches(…), mm(…), cm(…).";
        } else if (number && wanted.equals("Angle")) {
            return " Say in what: degrees(…).";
        } else if (given.equals("double") && (wanted.equals("int") || wanted.equals("long"))) {
            return " Put (" + wanted + ") before it to leave off its fraction, or let the variable be a double.";
        } else if (given.equals("Length") && (wanted.equals("double") || wanted.equals("int"))) {
            return " Its inches as a number are .inInches().";
        } else if (wanted.equals("String")) {
            return " Its words are \"\" + what it is.";
        }
        return "";
    }
}
