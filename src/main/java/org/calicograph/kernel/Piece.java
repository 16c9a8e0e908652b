package org.calicograph.kernel;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import jdk.jshell.Snippet;

/**
 * One statement or declaration of a cell: what JShell calls a snippet, before and after it has been
 * evaluated. Only the thread that evaluates touches what changes.
 */
final class Piece {

    static final Piece NONE = new Piece("", "", 0, Reading.NOTHING);

    private final String cell;
    private final String source;
    private final int offset;
    private final Reading reading;

    /** Several where one declaration declares several variables. */
    final List<Snippet> snippets = new ArrayList<>();
    /** What has been run for it, and can be run again. */
    final List<Method> runs = new ArrayList<>();
    String output = "";
    Object value;
    boolean hasValue;

    /**
     * @param source ends in a semicolon where Java wants one, even where the cell leaves it out
     * @param offset of the source in the cell's text
     */
    Piece(String cell, String source, int offset, Reading reading) {
        this.cell = cell;
        this.source = source;
        this.offset = offset;
        this.reading = reading;
    }

    String cell() {
        return cell;
    }

    String source() {
        return source;
    }

    int offset() {
        return offset;
    }

    Reading reading() {
        return reading;
    }

    boolean isStatement() {
        return reading.kind() == Reading.Kind.STATEMENT;
    }

    /** Empties its variables: the class that holds them stays as long as the process. */
    void letGo() {
        value = null;
        runs.forEach(run -> {
            for (Field field : run.getDeclaringClass().getDeclaredFields()) {
                if (Modifier.isStatic(field.getModifiers()) && !Modifier.isFinal(field.getModifiers()) && !field.getType().isPrimitive()) {
                    try {
                        field.setAccessible(true);
                        field.set(null, null);
                    } catch (ReflectiveOperationException e) {
                        return; // It holds on to its value; nothing else is lost.
                    }
                }
            }
        });
    }
}
