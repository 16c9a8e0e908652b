package org.calicograph.kernel.numbers;

import com.sun.source.tree.*;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.lang.model.element.Element;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.tools.Diagnostic;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import jdk.jshell.JShell;
import jdk.jshell.MethodSnippet;
import jdk.jshell.Snippet;
import jdk.jshell.TypeDeclSnippet;
import jdk.jshell.VarSnippet;

/**
 * Finds where a piece of a cell divides whole numbers although a number with a fraction is wanted, as in
 * {@code inches(25/2)}, which Java takes for 12 in.
 *
 * <p>A division counts if both its sides are whole numbers, it isn't one of two numbers that comes out even,
 * and what it gives goes, perhaps through more arithmetic, into a double: as an argument, a value given to a
 * variable or from a method, or the other side of arithmetic with a double; or into a method of the house that
 * takes a number with a fraction as well. A cast to a whole number says that the rest may go, as does
 * {@code Math.floorDiv}. The compiler itself tells the types; pieces without a stroke outside words and
 * comments cost nothing.
 */
public final class WholeDivision {

    /** A division in a piece: where it begins and ends there, and what is said of it. */
    public record Found(int from, int to, String message) { }

    private static final Pattern SILENT = Pattern.compile("(?s)\"\"\".*?\"\"\"|\"(?:[^\"\\\\\n]++|(?:\\\\.)++)*+\"|'(?:\\\\.|[^'\\\\])'|//[^\n]*|/\\*.*?\\*/");
    private static final String HOUSE = "org.calicograph.";
    private static final Set<String> BOXES = Set.of("java.lang.Integer", "java.lang.Long", "java.lang.Short", "java.lang.Byte", "java.lang.Character");
    private static final Set<Tree.Kind> ARITHMETIC = Set.of(Tree.Kind.PLUS, Tree.Kind.MINUS, Tree.Kind.MULTIPLY, Tree.Kind.DIVIDE, Tree.Kind.REMAINDER);
    private static final Set<Tree.Kind> COMPARING = Set.of(Tree.Kind.LESS_THAN, Tree.Kind.LESS_THAN_EQUAL, Tree.Kind.GREATER_THAN,
            Tree.Kind.GREATER_THAN_EQUAL, Tree.Kind.EQUAL_TO, Tree.Kind.NOT_EQUAL_TO);

    private final JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    private final StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null);
    private final List<String> options = new ArrayList<>();
    private final String imports;

    /**
     * @param options how cells are compiled
     * @param imports what every cell has
     */
    public WholeDivision(List<String> options, String imports) {
        this.options.addAll(options);
        this.options.add("-XDshould-stop.ifError=FLOW");
        this.imports = imports;
    }

    /**
     * The divisions of a piece, in its order.
     *
     * @param member   true if the piece is a method or a type
     * @param declares the names that it declares
     * @param jshell   knows what it uses of others
     */
    public List<Found> in(String source, boolean member, Set<String> declares, JShell jshell) {
        if (SILENT.matcher(source).replaceAll(" ").indexOf('/') < 0) {
            return List.of();
        }
        String head = imports + " class $Cell {" + known(jshell, declares);
        List<String[]> ways = member ? List.<String[]>of(new String[] {head + "\n", "\n}"})
                : List.of(new String[] {head + " Object $cell() throws Throwable { { ", "\n } return null; } }"},
                        new String[] {head + " Object $cell() throws Throwable { return ", "\n; } }"});
        for (String[] way : ways) {
            List<Found> found = new ArrayList<>();
            if (look(way[0], source, way[1], found)) {
                return found;
            }
        }
        return List.of();
    }

    /** What the cells have declared so far, without what the piece declares anew. */
    private static String known(JShell jshell, Set<String> own) {
        StringBuilder text = new StringBuilder();
        jshell.snippets().filter(s -> jshell.status(s) == Snippet.Status.VALID).forEach(s -> {
            if (s instanceof VarSnippet v && !own.contains(v.name())) {
                text.append(' ').append(v.typeName()).append(' ').append(v.name()).append(';');
            } else if (s instanceof MethodSnippet m && !own.contains(m.name()) || s instanceof TypeDeclSnippet t && !own.contains(t.name())) {
                text.append('\n').append(s.source()).append('\n');
            }
        });
        return text.toString();
    }

    /** False if the text doesn't parse in this wrapping. */
    private boolean look(String head, String source, String tail, List<Found> found) {
        boolean[] wrong = new boolean[1];
        JavaFileObject file = new SimpleJavaFileObject(URI.create("string:///$Cell.java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignore) {
                return head + source + tail;
            }
        };
        JavacTask task = (JavacTask) compiler.getTask(null, files, d -> wrong[0] |= d.getKind() == Diagnostic.Kind.ERROR, options, null, List.of(file));
        try {
            CompilationUnitTree unit = task.parse().iterator().next();
            if (wrong[0]) {
                return false;
            }
            task.analyze();
            Trees trees = Trees.instance(task);
            int from = head.length();
            new Scanner(trees, unit, from, from + source.length(), found).scan(unit, null);
            return true;
        } catch (IOException e) {
            throw new IllegalStateException(e); // a text in memory
        } catch (RuntimeException | AssertionError e) {
            return true; // The compiler lost its way in a text that has errors of its own, which it will tell.
        }
    }

    /** Walks the piece with the compiler's types. */
    private static final class Scanner extends TreePathScanner<Void, Void> {
        private final Trees trees;
        private final SourcePositions at;
        private final CompilationUnitTree unit;
        private final int from;
        private final int to;
        private final List<Found> found;

        Scanner(Trees trees, CompilationUnitTree unit, int from, int to, List<Found> found) {
            this.trees = trees;
            this.at = trees.getSourcePositions();
            this.unit = unit;
            this.from = from;
            this.to = to;
            this.found = found;
        }

        @Override
        public Void visitBinary(BinaryTree tree, Void none) {
            TreePath path = getCurrentPath();
            long start = at.getStartPosition(unit, tree);
            if (tree.getKind() == Tree.Kind.DIVIDE && start >= from && start < to && whole(path, tree.getLeftOperand()) && whole(path, tree.getRightOperand())
                    && !even(tree) && fractionWanted(path)) {
                int first = (int) start - from;
                found.add(new Found(first, (int) at.getEndPosition(unit, tree) - from, words(tree, path)));
                return null;
            }
            return super.visitBinary(tree, none);
        }

        private TypeMirror type(TreePath parent, Tree tree) {
            return trees.getTypeMirror(new TreePath(parent, tree));
        }

        private boolean whole(TreePath parent, Tree tree) {
            TypeMirror type = type(parent, tree);
            return type != null && (isWhole(type.getKind()) || BOXES.contains(type.toString()));
        }

        private static boolean isWhole(TypeKind kind) {
            return kind == TypeKind.INT || kind == TypeKind.LONG || kind == TypeKind.SHORT || kind == TypeKind.BYTE || kind == TypeKind.CHAR;
        }

        private static boolean broken(TypeMirror type) {
            return type != null && (type.getKind() == TypeKind.DOUBLE || type.getKind() == TypeKind.FLOAT
                    || type.toString().equals("java.lang.Double") || type.toString().equals("java.lang.Float"));
        }

        /** Follows the quotient outwards to where it is used. */
        private boolean fractionWanted(TreePath path) {
            Tree part = path.getLeaf();
            for (TreePath p = path.getParentPath(); p != null; part = p.getLeaf(), p = p.getParentPath()) {
                Tree tree = p.getLeaf();
                if (tree instanceof BinaryTree binary) {
                    Tree other = binary.getLeftOperand() == part ? binary.getRightOperand() : binary.getLeftOperand();
                    boolean numbers = ARITHMETIC.contains(tree.getKind());
                    if ((numbers || COMPARING.contains(tree.getKind())) && broken(type(p, other))) {
                        return true;
                    }
                    if (!numbers || !whole(p, other)) {
                        return false;
                    }
                } else if (tree instanceof MethodInvocationTree call) {
                    int index = call.getArguments().indexOf(part);
                    if (index < 0 || !(trees.getElement(p) instanceof ExecutableElement method)) {
                        return false;
                    }
                    if (takesFraction(method, index)) {
                        return true;
                    }
                    boolean math = method.getEnclosingElement().toString().equals("java.lang.Math") && !method.getSimpleName().toString().startsWith("floor");
                    if (!math || !isWhole(method.getReturnType().getKind())) {
                        return false;
                    }
                } else if (tree instanceof NewClassTree made) {
                    int index = made.getArguments().indexOf(part);
                    return index >= 0 && trees.getElement(p) instanceof ExecutableElement method && takesFraction(method, index);
                } else if (tree instanceof VariableTree variable) {
                    return broken(type(p, variable.getType()));
                } else if (tree instanceof AssignmentTree assigned) {
                    return broken(type(p, assigned.getVariable()));
                } else if (tree instanceof CompoundAssignmentTree assigned) {
                    return assigned.getExpression() == part && broken(type(p, assigned.getVariable()));
                } else if (tree instanceof TypeCastTree cast) {
                    return broken(type(p, cast.getType()));
                } else if (tree instanceof ReturnTree) {
                    return returnsFraction(p);
                } else if (tree instanceof ConditionalExpressionTree choice) {
                    if (choice.getCondition() == part) {
                        return false;
                    }
                } else if (!(tree instanceof ParenthesizedTree || tree.getKind() == Tree.Kind.UNARY_MINUS || tree.getKind() == Tree.Kind.UNARY_PLUS)) {
                    return false;
                }
            }
            return false;
        }

        private boolean returnsFraction(TreePath path) {
            for (TreePath p = path; p != null; p = p.getParentPath()) {
                if (p.getLeaf() instanceof LambdaExpressionTree || p.getLeaf() instanceof ClassTree) {
                    return false;
                }
                if (p.getLeaf() instanceof MethodTree method) {
                    return method.getReturnType() != null && broken(type(p, method.getReturnType()));
                }
            }
            return false;
        }

        /** True for a double, and for a whole number where the house has the same method for a double. */
        private static boolean takesFraction(ExecutableElement method, int index) {
            int last = method.getParameters().size() - 1;
            if (last < 0) {
                return false;
            }
            TypeMirror own = method.getParameters().get(Math.min(index, last)).asType();
            if (broken(own)) {
                return true;
            }
            Element type = method.getEnclosingElement();
            if (!(type instanceof TypeElement named) || !named.getQualifiedName().toString().startsWith(HOUSE) || !isWhole(own.getKind())) {
                return false;
            }
            return type.getEnclosedElements().stream().filter(e -> e instanceof ExecutableElement && e.getSimpleName().equals(method.getSimpleName()))
                    .map(e -> (ExecutableElement) e)
                    .anyMatch(e -> e.getParameters().size() == last + 1 && index <= last && broken(e.getParameters().get(index).asType()));
        }

        private static boolean even(BinaryTree tree) {
            Long a = number(tree.getLeftOperand());
            Long b = number(tree.getRightOperand());
            return a != null && b != null && (b == 0 || a % b == 0);
        }

        private static Long number(Tree tree) {
            if (tree instanceof ParenthesizedTree inner) {
                return number(inner.getExpression());
            }
            if (tree instanceof UnaryTree sign && sign.getKind() == Tree.Kind.UNARY_MINUS) {
                Long n = number(sign.getExpression());
                return n == null ? null : -n;
            }
            return tree instanceof LiteralTree literal && literal.getValue() instanceof Number n ? (Long) n.longValue() : null;
        }

        private static String words(BinaryTree tree, TreePath path) {
            String left = tree.getLeftOperand().toString();
            String right = tree.getRightOperand().toString();
            Long a = number(tree.getLeftOperand());
            Long b = number(tree.getRightOperand());
            String gives = a != null && b != null ? "gives " + a / b + ", without the rest" : "drops the rest";
            String with = b != null && tree.getRightOperand() instanceof LiteralTree ? left + "/" + b + ".0" : left + "/(double) " + right;
            String own = a != null && b != null && b > 0 && path.getParentPath().getLeaf() instanceof MethodInvocationTree call
                    && call.getArguments().size() == 1 && call.getMethodSelect().toString().matches("(Length\\.)?inches")
                    ? "inches(" + a + ", " + b + ") or " : "";
            return left + "/" + right + " divides whole numbers and " + gives + ". Write " + own + with + "; where the rest is to go, Math.floorDiv(" + left + ", "
                    + right + ").";
        }
    }
}
