package org.calicograph.reference;

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ThrowsTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Reads the public words of a folder of sources, by the JDK's own parser. */
public final class WordReader {

    private WordReader() { }

    /**
     * The words of one folder, types by name.
     *
     * @throws IOException if the folder can't be read
     */
    public static Room read(String name, Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(folder)) {
            files = all.filter(f -> f.toString().endsWith(".java")).sorted().toList();
        }
        List<Word> types = new ArrayList<>();
        String about = "";
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, manager, d -> { }, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            DocTrees docs = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                if (unit.getSourceFile().getName().endsWith("package-info.java")) {
                    about = text(docs.getDocCommentTree(new TreePath(new TreePath(unit), unit.getPackage())));
                }
                for (Tree type : unit.getTypeDecls()) {
                    if (type instanceof ClassTree c && c.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
                        types.add(type(docs, new TreePath(new TreePath(unit), type), c));
                    }
                }
            }
        }
        return new Room(name, about, types);
    }

    private static Word type(DocTrees docs, TreePath path, ClassTree type) {
        boolean open = type.getKind() == Tree.Kind.INTERFACE;
        List<Word> words = new ArrayList<>();
        List<String> constants = new ArrayList<>();
        for (Tree member : type.getMembers()) {
            TreePath at = new TreePath(path, member);
            if (member instanceof ClassTree inner && (open || inner.getModifiers().getFlags().contains(Modifier.PUBLIC))) {
                words.add(type(docs, at, inner));
            } else if (member instanceof MethodTree m && isSpoken(m.getModifiers(), open) && !(type.getKind() == Tree.Kind.RECORD && m.getReturnType() == null)) {
                words.add(word(docs, at, m.getReturnType() == null ? type.getSimpleName().toString() : m.getName().toString(), form(m, type)));
            } else if (member instanceof VariableTree v && type.getKind() == Tree.Kind.ENUM && v.getModifiers().getFlags().contains(Modifier.STATIC) && v.getInitializer() != null
                    && v.getType().toString().equals(type.getSimpleName().toString()) && v.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
                constants.add(v.getName().toString());
            } else if (member instanceof VariableTree v && isSpoken(v.getModifiers(), open) && v.getModifiers().getFlags().contains(Modifier.STATIC)) {
                words.add(word(docs, at, v.getName().toString(), v.getType() + " " + v.getName()));
            }
        }
        Word own = word(docs, path, type.getSimpleName().toString(), form(type, constants));
        return new Word(own.name(), own.form(), own.about(), own.parts(), own.errors(), words);
    }

    private static boolean isSpoken(ModifiersTree marks, boolean open) {
        return marks.getAnnotations().stream().noneMatch(a -> a.getAnnotationType().toString().equals("Override"))
                && (marks.getFlags().contains(Modifier.PUBLIC) || open && !marks.getFlags().contains(Modifier.PRIVATE));
    }

    private static String form(MethodTree m, ClassTree type) {
        String given = m.getParameters().stream().map(p -> p.getType() + " " + p.getName()).collect(Collectors.joining(", "));
        boolean varargs = !m.getParameters().isEmpty() && m.getParameters().get(m.getParameters().size() - 1).toString().contains("...");
        given = varargs ? given.replaceFirst("\\[\\] (\\w+)$", "... $1") : given;
        String name = m.getReturnType() == null ? "new " + type.getSimpleName() : (m.getModifiers().getFlags().contains(Modifier.STATIC) ? type.getSimpleName() + "." : "") + m.getName();
        return (m.getReturnType() == null ? "" : m.getReturnType() + " ") + name + "(" + given + ")";
    }

    private static String form(ClassTree type, List<String> constants) {
        String kind = switch (type.getKind()) {
            case RECORD -> "parts: " + type.getMembers().stream().filter(VariableTree.class::isInstance).map(VariableTree.class::cast)
                    .filter(v -> !v.getModifiers().getFlags().contains(Modifier.STATIC)).map(v -> v.getType() + " " + v.getName()).collect(Collectors.joining(", "));
            case ENUM -> "one of " + String.join(", ", constants);
            default -> "";
        };
        return kind.equals("parts: ") ? "" : kind;
    }

    private static Word word(DocTrees docs, TreePath path, String name, String form) {
        DocCommentTree comment = docs.getDocCommentTree(path);
        List<List<String>> parts = new ArrayList<>();
        String errors = "";
        if (comment != null) {
            for (DocTree tag : comment.getBlockTags()) {
                if (tag instanceof ParamTree param) {
                    parts.add(List.of(param.getName().toString(), text(param.getDescription())));
                } else if (tag instanceof ThrowsTree refused) {
                    errors = (errors.isEmpty() ? "" : errors + "; ") + text(refused.getDescription());
                }
            }
        }
        return new Word(name, form, comment == null ? "" : text(comment), parts, errors, List.of());
    }

    private static String text(DocCommentTree comment) {
        return comment == null ? "" : text(comment.getFullBody());
    }

    /** A comment's words without its marks; a paragraph begins with an empty line. */
    private static String text(List<? extends DocTree> parts) {
        StringBuilder out = new StringBuilder();
        for (DocTree part : parts) {
            out.append(switch (part.getKind()) {
                case LITERAL, CODE -> ((LiteralTree) part).getBody().getBody();
                case LINK, LINK_PLAIN -> link((LinkTree) part);
                case START_ELEMENT -> part.toString().equals("<p>") ? "\n\n" : "";
                case END_ELEMENT -> "";
                case ENTITY -> part.toString().equals("&nbsp;") ? " " : part.toString().equals("&lt;") ? "<" : part.toString().equals("&gt;") ? ">" : part.toString().equals("&amp;") ? "&" : "";
                default -> part.toString();
            });
        }
        return out.toString().lines().map(String::strip).collect(Collectors.joining("\n")).replaceAll("(?<!\n)\n(?!\n)", " ").strip();
    }

    private static String link(LinkTree link) {
        if (!link.getLabel().isEmpty()) {
            return text(link.getLabel());
        }
        String to = link.getReference().getSignature();
        return to.substring(to.lastIndexOf('.') + 1).replaceFirst("^#", "").replace('#', '.');
    }
}
