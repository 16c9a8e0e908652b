package org.calicograph.kernel;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * Javadoc of the house and of the stdlib, read from sources: a folder or a zip file named by the
 * system property {@code calicograph.sources}, and the stdlib's own files. Without sources there is no
 * Javadoc, and nothing else is missing.
 */
final class Sources {

    private static final Pattern METHOD = Pattern.compile("(?:^|\\s)([\\w.]+?)(?:<[^(]*>)?(?:\\.(?:<[^(]*>)?(\\w+))?\\(([^)]*)\\)");

    private final String place;
    private final Stdlib stdlib;
    private Optional<Map<String, Path>> files = Optional.empty();
    private final Map<String, Map<String, String>> read = new HashMap<>();

    Sources(String place, Stdlib stdlib) {
        this.place = place;
        this.stdlib = stdlib;
    }

    /** The Javadoc of a signature as JShell writes it ({@code Star Star.of(int points)}), as plain words. */
    String about(String signature) {
        Matcher matcher = METHOD.matcher(signature);
        if (matcher.find()) {
            String[] types = matcher.group(1).split("\\.");
            String type = types[types.length - 1];
            String method = matcher.group(2) == null ? type : matcher.group(2);
            int parameters = matcher.group(3).isBlank() ? 0 : parts(matcher.group(3));
            // A type within another is written in that one's file.
            Map<String, String> docs = docs(files().containsKey(type + ".java") ? type : types[0]);
            return docs.getOrDefault(method + "/" + parameterTypes(matcher.group(3)), docs.getOrDefault(method + "/" + parameters, ""));
        }
        String[] words = signature.strip().split("[\\s.<]+");
        return words.length == 0 ? "" : docs(words[words.length - 1]).getOrDefault("", "");
    }

    private static int parts(String list) {
        int depth = 0;
        int n = 1;
        for (char c : list.toCharArray()) {
            depth += c == '<' ? 1 : c == '>' ? -1 : 0;
            n += c == ',' && depth == 0 ? 1 : 0;
        }
        return n;
    }

    /** The types of a list of parameters without their names, type arguments and packages. */
    private static String parameterTypes(String list) {
        String bare = list.replaceAll("<[^<>]*>", "").replaceAll("<[^<>]*>", "");
        StringBuilder types = new StringBuilder();
        for (String each : bare.split(",")) {
            String[] words = each.strip().replaceAll("^final ", "").split("\\s+");
            String type = words[0];
            types.append(type.substring(type.lastIndexOf('.', type.endsWith("...") ? type.length() - 4 : type.length()) + 1)).append(',');
        }
        return types.toString();
    }

    private synchronized Map<String, String> docs(String type) {
        return read.computeIfAbsent(type, t -> {
            Path file = files().get(t + ".java");
            try {
                return file == null ? Map.of() : parse(Files.readString(file));
            } catch (IOException e) {
                return Map.of();
            }
        });
    }

    private Map<String, Path> files() {
        if (files.isEmpty()) {
            Map<String, Path> all = new LinkedHashMap<>();
            if (!place.isBlank()) {
                try {
                    Path given = Path.of(place);
                    Path root = given;
                    if (Files.isRegularFile(given)) {
                        FileSystem zip = FileSystems.newFileSystem(given);
                        root = zip.getPath("/");
                    }
                    try (Stream<Path> walk = Files.exists(root) ? Files.walk(root) : Stream.<Path>empty()) {
                        walk.filter(f -> f.toString().endsWith(".java")).sorted().forEach(f -> all.putIfAbsent(f.getFileName().toString(), f));
                    }
                } catch (IOException e) {
                    all.clear();
                }
            }
            stdlib.files().forEach(f -> all.put(f.getFileName().toString(), f));
            files = Optional.of(all);
        }
        return files.get();
    }

    private static Map<String, String> parse(String text) throws IOException {
        Map<String, String> docs = new HashMap<>();
        Set<String> counted = new HashSet<>();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        JavacTask task = (JavacTask) compiler.getTask(null, null, d -> { }, List.of("-proc:none"), null,
                List.of(new SimpleJavaFileObject(java.net.URI.create("string:///Source.java"), javax.tools.JavaFileObject.Kind.SOURCE) {
                    @Override
                    public CharSequence getCharContent(boolean ignore) {
                        return text;
                    }
                }));
        for (CompilationUnitTree unit : task.parse()) {
            DocTrees trees = DocTrees.instance(task);
            new TreePathScanner<Void, Void>() {
                @Override
                public Void visitClass(ClassTree tree, Void none) {
                    if (getCurrentPath().getParentPath().getLeaf().getKind() == Tree.Kind.COMPILATION_UNIT) {
                        keep("", getCurrentPath());
                    }
                    return super.visitClass(tree, none);
                }

                @Override
                public Void visitMethod(MethodTree tree, Void none) {
                    String name = tree.getReturnType() == null ? ((ClassTree) getCurrentPath().getParentPath().getLeaf()).getSimpleName().toString()
                            : tree.getName().toString();
                    StringBuilder types = new StringBuilder();
                    tree.getParameters().forEach(p -> types.append(p.getType()).append(' ').append(p.getName()).append(','));
                    keep(name + "/" + parameterTypes(types.toString()), getCurrentPath());
                    // By their number alone only where no other method has as many.
                    String number = name + "/" + tree.getParameters().size();
                    if (counted.add(number)) {
                        keep(number, getCurrentPath());
                    } else {
                        docs.remove(number);
                    }
                    return null;
                }

                private void keep(String key, TreePath path) {
                    String doc = trees.getDocComment(path);
                    if (doc != null) {
                        docs.putIfAbsent(key, plain(doc).replaceAll("(?m)^@param (\\S+)\\s+", "$1: ").replaceAll("(?m)^@return ", "Gives ")
                                .replaceAll("(?m)^@throws \\w+ ", "Refused "));
                    }
                }
            }.scan(unit, null);
        }
        return docs;
    }

    /** A Javadoc comment without its mark-up. */
    static String plain(String doc) {
        return doc.replaceAll("\\{@(?:code|link|linkplain|literal)\\s+([^}]*)}", "$1")
                .replaceAll("(?i)</?(?:p|b|i|em|code|pre|ul|ol|li|strong)>", "").replace("&nbsp;", " ").replace("&lt;", "<")
                .replace("&gt;", ">").replace("&amp;", "&").lines().map(String::strip)
                .reduce("", (a, b) -> a.isEmpty() ? b : b.isEmpty() || b.startsWith("@") || a.endsWith("\n") ? a + "\n" + b : a + " " + b)
                .replaceAll("\n{2,}", "\n\n").strip();
    }

    /** The first sentence of plain words. */
    static String first(String plain) {
        String line = plain.replaceAll("\\s+", " ").strip();
        Matcher end = Pattern.compile("[.!?](?=\\s|$)").matcher(line);
        String sentence = end.find() ? line.substring(0, end.end()) : line;
        return sentence.startsWith("@") ? "" : sentence;
    }
}
