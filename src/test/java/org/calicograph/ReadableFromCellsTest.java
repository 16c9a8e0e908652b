package org.calicograph;

import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.calicograph.wire.VisiblePackages;
import org.junit.jupiter.api.Test;

/** What a cell can name is explained: completion shows the comment, so there must be one. The sources are read by the JDK's own parser. */
class ReadableFromCellsTest {

    private static final Path SOURCES = Path.of("src/main/java/org/calicograph");

    private final List<String> silent = new ArrayList<>();
    private int read;

    @Test
    void every_type_method_and_constant_that_a_cell_can_name_says_what_it_is() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, files, d -> { }, List.of("-proc:none"), null,
                    files.getJavaFileObjectsFromPaths(visible()));
            DocTrees docs = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                for (Tree type : unit.getTypeDecls()) {
                    read(docs, unit, (ClassTree) type, new TreePath(new TreePath(unit), type), unit.getPackageName() + ".", false);
                }
            }
        }
        assertTrue(read > 1200, "only " + read + " names were read: is the parser at work?");
        assertTrue(silent.isEmpty(), silent.size() + " of " + read + " names that a cell can write have no comment:\n" + String.join("\n", silent));
    }

    private void read(DocTrees docs, CompilationUnitTree unit, ClassTree type, TreePath path, String before, boolean open) {
        if (!open && !type.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
            return;
        }
        String name = before + type.getSimpleName();
        read++;
        if (before.endsWith(unit.getPackageName() + ".") && docs.getDocCommentTree(path) == null) {
            silent.add(name);
        }
        boolean members = type.getKind() == Tree.Kind.INTERFACE;
        for (Tree member : type.getMembers()) {
            TreePath at = new TreePath(path, member);
            if (member instanceof ClassTree inner) {
                read(docs, unit, inner, at, name + ".", members);
            } else if (isSpoken(type, member, members)) {
                read++;
                if (docs.getDocCommentTree(at) == null) {
                    silent.add(name + "." + (member instanceof MethodTree m ? m.getName() + "(" + m.getParameters() + ")"
                            : ((VariableTree) member).getName()));
                }
            }
        }
    }

    /** Public, not taken over from what it overrides, and not a record's compact constructor, whose parts the record's own comment tells. */
    private static boolean isSpoken(ClassTree type, Tree member, boolean open) {
        ModifiersTree marks = member instanceof MethodTree m ? m.getModifiers() : member instanceof VariableTree v ? v.getModifiers() : null;
        if (marks == null || marks.getAnnotations().stream().anyMatch(a -> a.getAnnotationType().toString().equals("Override"))) {
            return false;
        }
        boolean ofRecord = type.getKind() == Tree.Kind.RECORD && member instanceof MethodTree m && m.getReturnType() == null;
        boolean constant = type.getKind() == Tree.Kind.ENUM && member instanceof VariableTree;
        return !ofRecord && !constant && (marks.getFlags().contains(Modifier.PUBLIC) || open && !marks.getFlags().contains(Modifier.PRIVATE));
    }

    private static List<Path> visible() throws IOException {
        List<Path> found = new ArrayList<>();
        for (String room : VisiblePackages.HOUSE) {
            try (Stream<Path> files = Files.list(SOURCES.resolve(room.replace('.', '/')))) {
                files.filter(f -> f.toString().endsWith(".java") && !f.endsWith("package-info.java")).sorted().forEach(found::add);
            }
        }
        return found;
    }
}
