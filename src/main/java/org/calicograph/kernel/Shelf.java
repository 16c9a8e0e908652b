package org.calicograph.kernel;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.lang.model.element.Modifier;
import javax.tools.ToolProvider;
import org.calicograph.wire.Catalogue;

/** Reads what the stdlib holds from its sources. */
final class Shelf {

    private final Stdlib stdlib;

    Shelf(Stdlib stdlib) {
        this.stdlib = stdlib;
    }

    Catalogue catalogue() throws IOException {
        List<Catalogue.Entry> entries = new ArrayList<>();
        List<Stdlib.Source> sources = new ArrayList<>();
        for (Path file : stdlib.files()) {
            sources.add(new Stdlib.Source(file, Files.readString(file)));
        }
        if (!sources.isEmpty()) {
            JavacTask task = (JavacTask) ToolProvider.getSystemJavaCompiler().getTask(null, null, d -> { }, List.of("-proc:none"), null, sources);
            Iterable<? extends CompilationUnitTree> units = task.parse();
            DocTrees trees = DocTrees.instance(task);
            for (CompilationUnitTree unit : units) {
                for (Tree type : unit.getTypeDecls()) {
                    if (type instanceof ClassTree tree && tree.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
                        entries.add(entry(unit, tree, trees));
                    }
                }
            }
        }
        return new Catalogue(entries, stdlib.broken());
    }

    private Catalogue.Entry entry(CompilationUnitTree unit, ClassTree type, DocTrees trees) {
        String name = unit.getSourceFile().getName();
        String simple = name.substring(name.lastIndexOf('/') + 1);
        String file = stdlib.files().stream().filter(f -> f.getFileName().toString().equals(simple)).findFirst().map(Path::toString).orElse(name);
        TreePath path = TreePath.getPath(unit, type);
        List<Catalogue.Routine> routines = new ArrayList<>();
        for (Tree member : type.getMembers()) {
            if (member instanceof MethodTree method && method.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
                TreePath at = new TreePath(path, method);
                long line = unit.getLineMap().getLineNumber(trees.getSourcePositions().getStartPosition(unit, method));
                String parameters = method.getParameters().stream().map(p -> p.getType() + " " + p.getName()).collect(Collectors.joining(", "));
                String head = method.getReturnType() == null ? type.getSimpleName().toString()
                        : (method.getModifiers().getFlags().contains(Modifier.STATIC) ? "static " : "") + method.getReturnType() + " " + method.getName();
                routines.add(new Catalogue.Routine(head + "(" + parameters + ")", about(trees, at), (int) line));
            }
        }
        return new Catalogue.Entry(type.getSimpleName().toString(), about(trees, path), file, routines);
    }

    private static String about(DocTrees trees, TreePath path) {
        String doc = trees.getDocComment(path);
        return doc == null ? "" : Sources.first(Sources.plain(doc));
    }
}
