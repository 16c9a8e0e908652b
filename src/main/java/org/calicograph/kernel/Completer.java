package org.calicograph.kernel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;
import jdk.jshell.SourceCodeAnalysis;
import org.calicograph.wire.FromKernel;
import org.calicograph.wire.Signature;
import org.calicograph.wire.Suggestion;
import org.calicograph.wire.ToKernel;
import org.calicograph.wire.VisiblePackages;

/**
 * Ways to go on writing, and what is named at the cursor.
 *
 * <p>JShell knows what has been evaluated. What stands earlier in the same cell, and in cells that have
 * not been evaluated, is put before the piece that is being written, as the body of a method in a
 * class, so that its names and their types are known too.
 */
final class Completer {

    /** What every object of Java can do, and no quilter asks for. */
    private static final Pattern OF_EVERYTHING = Pattern.compile("(equals|hashCode|getClass|notify|notifyAll|wait|clone|finalize)\\(.*");

    private static final int MOST = 400;
    /** What looks like a declaration, for texts that can't be parsed yet: a type, a name, and what may follow one. */
    private static final Pattern DECLARED = Pattern.compile("(?:\\bvar|\\b[A-Z]\\w*(?:<[^;(){}]*>)?|\\b(?:int|long|double|float|boolean|char|byte|short))(?:\\[\\])*"
            + "\\s+([a-z]\\w*)\\s*(?=[=;:,)])");

    private final Cells cells;
    private final Sources sources;

    /** The text before the cursor as JShell is to see it. */
    private record Scratch(String code, int shift, List<String> names, int start) { }

    Completer(Cells cells, Sources sources) {
        this.cells = cells;
        this.sources = sources;
    }

    FromKernel.Suggested complete(ToKernel.Complete asked) {
        String text = asked.text().substring(0, Math.max(0, Math.min(asked.offset(), asked.text().length())));
        int word = wordStart(text);
        String prefix = text.substring(word);
        boolean member = memberAt(text, word);
        Map<String, Suggestion> found = new LinkedHashMap<>();
        int anchor = word;
        ReentrantLock compiler = cells.compiler();
        compiler.lock();
        try {
            Scratch scratch = scratch(asked.before(), text);
            int[] at = {scratch.code.length()};
            for (SourceCodeAnalysis.Suggestion each : cells.analysis().completionSuggestions(scratch.code, scratch.code.length(), at)) {
                put(found, each.continuation(), each.matchesType());
            }
            if (!found.isEmpty()) {
                anchor = Math.max(0, at[0] - scratch.shift);
            }
            if (!member) {
                scratch.names.stream().filter(n -> n.startsWith(prefix)).forEach(n -> put(found, n, false));
            }
        } catch (RuntimeException e) {
            // The compiler's own analysis stumbles over some half-written texts; there are no suggestions then.
            return new FromKernel.Suggested(asked.ticket(), word, List.of());
        } finally {
            compiler.unlock();
        }
        String kept = text.substring(Math.min(anchor, text.length()));
        List<Suggestion> sorted = found.values().stream().filter(s -> s.insert().startsWith(kept) && !s.insert().contains("$") && !OF_EVERYTHING.matcher(s.insert()).matches()
                        && (member || !VisiblePackages.MACHINERY.contains(s.insert().replaceFirst("[^A-Za-z].*", ""))))
                .sorted(Comparator.comparing((Suggestion s) -> !s.fits()).thenComparing(s -> s.kind() == Suggestion.Kind.KEYWORD)
                        .thenComparing(Suggestion::insert)).limit(MOST).toList();
        return new FromKernel.Suggested(asked.ticket(), anchor, sorted);
    }

    FromKernel.Explained explain(ToKernel.Explain asked) {
        String text = asked.text().substring(0, Math.max(0, Math.min(asked.offset(), asked.text().length())));
        List<Signature> signatures = new ArrayList<>();
        ReentrantLock compiler = cells.compiler();
        compiler.lock();
        try {
            Scratch scratch = scratch(asked.before(), text);
            List<SourceCodeAnalysis.Documentation> found = cells.analysis().documentation(scratch.code, scratch.code.length(), false);
            int call = openCall(scratch.code);
            if (found.isEmpty() && call > 0) {
                // Nothing takes what stands there so far: all that could be meant.
                found = cells.analysis().documentation(scratch.code.substring(0, call), call, false);
            }
            for (SourceCodeAnalysis.Documentation each : found) {
                // Packages make a signature long and say little; newer Javas put a record's components in as well.
                signatures.add(new Signature(each.signature().replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "")
                        .replaceAll("\\([^()]*\\)\\.", ".").replaceAll("\\bAbove\\$\\d+\\.", ""), ""));
            }
        } catch (RuntimeException e) {
            signatures.clear();
        } finally {
            compiler.unlock();
        }
        return new FromKernel.Explained(asked.ticket(), signatures.stream().distinct()
                .map(s -> new Signature(s.declaration(), sources.about(s.declaration()))).toList());
    }

    private static void put(Map<String, Suggestion> found, String insert, boolean fits) {
        Suggestion.Kind kind = insert.endsWith("(") || insert.endsWith(")") ? Suggestion.Kind.METHOD
                : insert.endsWith(" ") || SourceVersion.isKeyword(insert.strip()) ? Suggestion.Kind.KEYWORD : Suggestion.Kind.NAME;
        found.merge(insert, new Suggestion(insert, fits, kind), (a, b) -> a.fits() ? a : b);
    }

    /** Just behind the bracket of the innermost call that is open at the end; 0 if none is. Words in quotes are passed over. */
    private static int openCall(String code) {
        int depth = 0;
        boolean quoted = false;
        for (int i = code.length() - 1; i > 0; i--) {
            char c = code.charAt(i);
            quoted ^= c == '"';
            if (!quoted && c == ')') {
                depth++;
            } else if (!quoted && c == '(' && depth-- == 0) {
                return i + 1;
            }
        }
        return 0;
    }

    private static int wordStart(String text) {
        int start = text.length();
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    private static boolean memberAt(String text, int word) {
        int i = word - 1;
        while (i >= 0 && Character.isWhitespace(text.charAt(i))) {
            i--;
        }
        return i >= 0 && text.charAt(i) == '.';
    }

    private Scratch scratch(List<String> before, String text) {
        List<Reader.Cut> earlier = new ArrayList<>();
        for (String other : before) {
            earlier.addAll(Reader.cut(other, cells.analysis()));
        }
        List<Reader.Cut> own = Reader.cut(text, cells.analysis());
        int start = text.length();
        if (!own.isEmpty()) {
            Reader.Cut last = own.get(own.size() - 1);
            boolean whole = text.stripTrailing().endsWith(";") || text.stripTrailing().endsWith("}");
            if (!whole) {
                start = last.offset();
                own = own.subList(0, own.size() - 1);
            }
        }
        earlier.addAll(own);
        List<Reading> readings = cells.reader().read(earlier.stream().map(Reader.Cut::source).toList());
        StringBuilder code = new StringBuilder();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < earlier.size(); i++) {
            String source = earlier.get(i).source().strip();
            Reading reading = readings.get(i);
            reading.declares().forEach(d -> names.add(reading.kind() == Reading.Kind.METHOD ? d.name() + "(" : d.name()));
            switch (reading.kind()) {
                case IMPORT -> { }
                case METHOD -> code.append("class Above$").append(i).append(" { ").append(source).append(" void at$").append(i).append("() { ");
                case VARIABLE -> code.append(source).append(source.endsWith(";") ? " " : "; ");
                case TYPE -> code.append(source).append(' ');
                case STATEMENT -> { }
            }
        }
        String partial = text.substring(start);
        boolean declaration = partial.strip().matches("(?s)(?:[\\w<>\\[\\], ]+)\\s+\\w+\\s*\\([^)]*\\)\\s*\\{.*");
        // Where a block is open, the compiler finds its way only within another.
        if (code.length() > 0 || partial.indexOf('{') >= 0) {
            code.insert(0, "{ ");
            if (declaration) {
                code.append("class Here$ { ");
            }
        }
        Matcher declared = DECLARED.matcher(text);
        while (declared.find()) {
            if (!names.contains(declared.group(1)) && !SourceVersion.isKeyword(declared.group(1)) && declared.end(1) < text.length()) {
                names.add(declared.group(1));
            }
        }
        int shift = code.length() - start;
        return new Scratch(code + partial, shift, names, start);
    }
}
