package org.calicograph.kernel;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.tools.Diagnostic;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import jdk.jshell.SourceCodeAnalysis;
import org.calicograph.wire.CellScan;

/** Cuts cells into pieces and reads what each declares, reads and writes, without compiling anything. */
final class Reader {

    private static final int MOST_KEPT = 100_000;

    /** A piece as cut: its source and where it begins in the cell. */
    record Cut(String source, int offset) { }

    private static final class Unit extends SimpleJavaFileObject {
        final int index;
        private final String text;

        Unit(int index, String text) {
            super(URI.create("string:///P" + index + ".java"), Kind.SOURCE);
            this.index = index;
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignore) {
            return text;
        }
    }

    private final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    private final Map<String, Reading> known = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Reading> eldest) {
            return size() > MOST_KEPT;
        }
    };

    /** The pieces of a cell, in order; what can't be cut stays whole, for the compiler to say what is wrong. */
    static List<Cut> cut(String text, SourceCodeAnalysis analysis) {
        List<Cut> cuts = new ArrayList<>();
        String rest = text;
        while (!rest.isBlank()) {
            int offset = text.length() - rest.length();
            SourceCodeAnalysis.CompletionInfo info = analysis.analyzeCompletion(rest);
            if (info.completeness() == SourceCodeAnalysis.Completeness.EMPTY) {
                break;
            }
            String source = info.source();
            String remaining = info.remaining();
            if (!info.completeness().isComplete() || source == null || source.isBlank()) {
                source = rest;
                remaining = "";
            }
            if (!source.strip().equals(";")) {
                cuts.add(new Cut(source, offset));
            }
            rest = remaining == null ? "" : remaining;
        }
        return cuts;
    }

    /** What each source says; sources that don't parse say nothing. */
    synchronized List<Reading> read(List<String> sources) {
        List<String> fresh = sources.stream().filter(s -> !known.containsKey(s)).distinct().toList();
        if (!fresh.isEmpty()) {
            Map<Integer, Reading> read = new HashMap<>();
            List<Unit> members = new ArrayList<>();
            for (int i = 0; i < fresh.size(); i++) {
                String bare = fresh.get(i).stripLeading();
                if (bare.startsWith("import ") || bare.startsWith("import\t")) {
                    read.put(i, new Reading(Reading.Kind.IMPORT, List.of(), Set.of(), Set.of(), false));
                } else {
                    members.add(new Unit(i, "class $ {\n" + fresh.get(i) + "\n}"));
                }
            }
            parse(members, true, read);
            parse(unread(members, read, "class $ { void $() {\n", fresh, "\n} }"), false, read);
            // Java's grammar has no statement 'a + 1;', which a cell may well end in.
            parse(unread(members, read, "class $ { Object $() { return\n", fresh, "\n; } }"), false, read);
            for (int i = 0; i < fresh.size(); i++) {
                known.put(fresh.get(i), read.getOrDefault(i, Reading.NOTHING));
            }
        }
        List<Reading> all = new ArrayList<>();
        sources.forEach(s -> all.add(known.getOrDefault(s, Reading.NOTHING)));
        return all;
    }

    private static List<Unit> unread(List<Unit> units, Map<Integer, Reading> read, String head, List<String> sources, String tail) {
        return units.stream().filter(u -> !read.containsKey(u.index)).map(u -> new Unit(u.index, head + sources.get(u.index) + tail)).toList();
    }

    private void parse(List<Unit> units, boolean members, Map<Integer, Reading> into) {
        if (units.isEmpty()) {
            return;
        }
        Set<Integer> wrong = new HashSet<>();
        JavacTask task = (JavacTask) compiler.getTask(null, null, diagnostic -> note(diagnostic, wrong),
                List.of("-proc:none", "-Xlint:none", "-XDshould-stop.ifError=PARSE", "-Xmaxerrs", "10000000"), null, units);
        try {
            for (CompilationUnitTree tree : task.parse()) {
                int index = index(tree.getSourceFile());
                if (!wrong.contains(index)) {
                    NameScanner scanner = new NameScanner(members);
                    scanner.scan(tree, null);
                    into.put(index, scanner.reading());
                }
            }
        } catch (IOException e) {
            throw new IllegalStateException(e); // texts in memory
        }
    }

    private static void note(Diagnostic<? extends JavaFileObject> diagnostic, Set<Integer> wrong) {
        if (diagnostic.getKind() == Diagnostic.Kind.ERROR && diagnostic.getSource() != null) {
            wrong.add(index(diagnostic.getSource()));
        }
    }

    /** By name: the compiler hands out wrappers of the files that it was given. */
    private static int index(JavaFileObject file) {
        String name = file.getName();
        return Integer.parseInt(name.substring(name.lastIndexOf('P') + 1, name.lastIndexOf('.')));
    }

    /** What each cell says about names; all pieces are read together, since every start of the compiler costs more than a piece. */
    List<CellScan> whole(List<String> cells, List<List<String>> pieces) {
        read(pieces.stream().flatMap(List::stream).toList());
        List<CellScan> scans = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            scans.add(whole(cells.get(i), read(pieces.get(i))));
        }
        return scans;
    }

    private static CellScan whole(String cell, List<Reading> readings) {
        List<CellScan.Declared> declares = new ArrayList<>();
        Set<String> reads = new LinkedHashSet<>();
        Set<String> writes = new LinkedHashSet<>();
        for (Reading reading : readings) {
            declares.addAll(reading.declares());
            reads.addAll(reading.reads());
            writes.addAll(reading.writes());
        }
        for (CellScan.Declared own : declares) {
            reads.remove(own.name());
            writes.remove(own.name());
        }
        return new CellScan(cell, declares, List.copyOf(reads), List.copyOf(writes));
    }
}
