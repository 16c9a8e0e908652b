package org.calicograph.kernel;

import com.sun.source.tree.*;
import com.sun.source.util.TreeScanner;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Modifier;
import org.calicograph.wire.CellScan;

/** Walks one parsed piece, wrapped in a class or in a method of a class, and notes the names. */
final class NameScanner extends TreeScanner<Void, Void> {

    private final boolean members;
    private final Deque<Set<String>> scopes = new ArrayDeque<>();
    private final List<CellScan.Declared> declares = new ArrayList<>();
    private final Set<String> reads = new LinkedHashSet<>();
    private final Set<String> writes = new LinkedHashSet<>();
    private Reading.Kind kind = Reading.Kind.STATEMENT;
    private boolean state;

    NameScanner(boolean members) {
        this.members = members;
    }

    Reading reading() {
        Set<String> free = new LinkedHashSet<>(reads);
        declares.forEach(d -> free.remove(d.name()));
        return new Reading(kind, List.copyOf(declares), free, Set.copyOf(writes), state);
    }

    @Override
    public Void visitCompilationUnit(CompilationUnitTree tree, Void none) {
        ClassTree wrapper = (ClassTree) tree.getTypeDecls().get(0);
        List<? extends Tree> parts = wrapper.getMembers();
        if (!members) {
            BlockTree body = ((MethodTree) parts.get(0)).getBody();
            parts = body.getStatements();
        }
        for (Tree part : parts) {
            top(part);
        }
        return null;
    }

    private void top(Tree part) {
        if (part instanceof VariableTree variable) {
            kind = Reading.Kind.VARIABLE;
            declare(variable.getName().toString());
            scan(variable.getType(), null);
            scan(variable.getInitializer(), null);
        } else if (part instanceof MethodTree method) {
            kind = Reading.Kind.METHOD;
            StringBuilder key = new StringBuilder(method.getName()).append('(');
            method.getParameters().forEach(p -> key.append(p.getType()).append(','));
            declares.add(new CellScan.Declared(method.getName().toString(), key.append(')').toString()));
            scan(method, null);
        } else if (part instanceof ClassTree type) {
            kind = Reading.Kind.TYPE;
            declare(type.getSimpleName().toString());
            state = computesOnce(type);
            scan(type, null);
        } else if (part instanceof BlockTree block) {
            scan(block, null);
        } else {
            scan(part, null);
        }
    }

    private void declare(String name) {
        declares.add(new CellScan.Declared(name, name));
    }

    /** True for static fields, enum constants and static blocks, also those of types within. */
    private static boolean computesOnce(ClassTree type) {
        for (Tree member : type.getMembers()) {
            if (member instanceof VariableTree field && field.getInitializer() != null
                    && (field.getModifiers().getFlags().contains(Modifier.STATIC) || type.getKind() == Tree.Kind.INTERFACE
                        || type.getKind() == Tree.Kind.ENUM)
                    || member instanceof BlockTree block && block.isStatic() || member instanceof ClassTree inner && computesOnce(inner)) {
                return true;
            }
        }
        return false;
    }

    private Void within(Runnable walk) {
        scopes.push(new HashSet<>());
        walk.run();
        scopes.pop();
        return null;
    }

    private boolean local(String name) {
        return scopes.stream().anyMatch(s -> s.contains(name));
    }

    private void add(String name) {
        if (!scopes.isEmpty()) {
            scopes.peek().add(name);
        }
    }

    @Override
    public Void visitClass(ClassTree tree, Void none) {
        add(tree.getSimpleName().toString());
        return within(() -> {
            for (Tree member : tree.getMembers()) {
                if (member instanceof VariableTree field) {
                    add(field.getName().toString());
                } else if (member instanceof MethodTree method) {
                    add(method.getName().toString());
                } else if (member instanceof ClassTree inner) {
                    add(inner.getSimpleName().toString());
                }
            }
            tree.getTypeParameters().forEach(p -> add(p.getName().toString()));
            super.visitClass(tree, none);
        });
    }

    @Override
    public Void visitMethod(MethodTree tree, Void none) {
        return within(() -> {
            tree.getTypeParameters().forEach(p -> add(p.getName().toString()));
            super.visitMethod(tree, none);
        });
    }

    @Override
    public Void visitVariable(VariableTree tree, Void none) {
        super.visitVariable(tree, none);
        add(tree.getName().toString());
        return null;
    }

    @Override
    public Void visitBlock(BlockTree tree, Void none) {
        return within(() -> super.visitBlock(tree, none));
    }

    @Override
    public Void visitForLoop(ForLoopTree tree, Void none) {
        return within(() -> super.visitForLoop(tree, none));
    }

    @Override
    public Void visitEnhancedForLoop(EnhancedForLoopTree tree, Void none) {
        return within(() -> super.visitEnhancedForLoop(tree, none));
    }

    @Override
    public Void visitLambdaExpression(LambdaExpressionTree tree, Void none) {
        return within(() -> super.visitLambdaExpression(tree, none));
    }

    @Override
    public Void visitTry(TryTree tree, Void none) {
        return within(() -> super.visitTry(tree, none));
    }

    @Override
    public Void visitCatch(CatchTree tree, Void none) {
        return within(() -> super.visitCatch(tree, none));
    }

    @Override
    public Void visitSwitch(SwitchTree tree, Void none) {
        return within(() -> super.visitSwitch(tree, none));
    }

    @Override
    public Void visitSwitchExpression(SwitchExpressionTree tree, Void none) {
        return within(() -> super.visitSwitchExpression(tree, none));
    }

    @Override
    public Void visitIdentifier(IdentifierTree tree, Void none) {
        String name = tree.getName().toString();
        if (!name.equals("this") && !name.equals("super") && !local(name)) {
            reads.add(name);
        }
        return null;
    }

    @Override
    public Void visitAssignment(AssignmentTree tree, Void none) {
        written(tree.getVariable());
        return super.visitAssignment(tree, none);
    }

    @Override
    public Void visitCompoundAssignment(CompoundAssignmentTree tree, Void none) {
        written(tree.getVariable());
        return super.visitCompoundAssignment(tree, none);
    }

    @Override
    public Void visitUnary(UnaryTree tree, Void none) {
        switch (tree.getKind()) {
            case PREFIX_INCREMENT, PREFIX_DECREMENT, POSTFIX_INCREMENT, POSTFIX_DECREMENT -> written(tree.getExpression());
            default -> { }
        }
        return super.visitUnary(tree, none);
    }

    private void written(Tree target) {
        if (target instanceof IdentifierTree identifier) {
            String name = identifier.getName().toString();
            if (!local(name)) {
                writes.add(name);
            }
        } else if (target instanceof ArrayAccessTree array) {
            written(array.getExpression());
        } else if (target instanceof MemberSelectTree member && !member.getExpression().toString().equals("this")) {
            written(member.getExpression());
        } else if (target instanceof ParenthesizedTree inner) {
            written(inner.getExpression());
        }
    }
}
