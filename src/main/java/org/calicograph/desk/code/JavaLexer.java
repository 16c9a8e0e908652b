package org.calicograph.desk.code;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Finds what is coloured in a Java text. It takes any text, finished or not: a string without its end
 * runs to the end of its line, a remark without its end to the end of the text.
 */
final class JavaLexer {

    private static final Set<String> KEYWORDS = Set.of("abstract", "assert", "boolean", "break", "byte", "case", "catch", "char",
            "class", "continue", "default", "do", "double", "else", "enum", "extends", "final", "finally", "float", "for", "if",
            "implements", "import", "instanceof", "int", "interface", "long", "new", "package", "private", "protected", "public",
            "record", "return", "sealed", "permits", "short", "static", "super", "switch", "synchronized", "this", "throw", "throws",
            "try", "var", "void", "volatile", "while", "yield", "true", "false", "null");

    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private JavaLexer(String text) {
        this.text = text;
    }

    /** The tokens in the order of the text; what lies between them is plain. */
    static List<Token> tokens(String text) {
        JavaLexer lexer = new JavaLexer(text);
        while (lexer.at < text.length()) {
            lexer.next();
        }
        return List.copyOf(lexer.tokens);
    }

    private void next() {
        char c = text.charAt(at);
        if (text.startsWith("//", at)) {
            take(Token.Kind.REMARK, endOf("\n", at, false));
        } else if (text.startsWith("/*", at)) {
            take(Token.Kind.REMARK, endOf("*/", at + 2, true));
        } else if (text.startsWith("\"\"\"", at)) {
            take(Token.Kind.TEXT, endOf("\"\"\"", at + 3, true));
        } else if (c == '"' || c == '\'') {
            take(Token.Kind.TEXT, endOfQuoted(c));
        } else if (Character.isDigit(c)) {
            take(Token.Kind.NUMBER, endOfNumber());
        } else if (c == '@' && at + 1 < text.length() && Character.isJavaIdentifierStart(text.charAt(at + 1))) {
            take(Token.Kind.ANNOTATION, endOfName(at + 1));
        } else if (Character.isJavaIdentifierStart(c)) {
            name();
        } else {
            at++;
        }
    }

    private void take(Token.Kind kind, int end) {
        tokens.add(new Token(at, end, kind));
        at = end;
    }

    private void name() {
        int end = endOfName(at);
        String word = text.substring(at, end);
        if (KEYWORDS.contains(word)) {
            take(Token.Kind.KEYWORD, end);
        } else if (end < text.length() && text.charAt(end) == '(') {
            take(Token.Kind.CALL, end);
        } else if (Character.isUpperCase(word.charAt(0))) {
            take(Token.Kind.TYPE, end);
        } else {
            at = end;
        }
    }

    private int endOfName(int from) {
        int end = from;
        while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
            end++;
        }
        return end;
    }

    private int endOfNumber() {
        int end = at;
        while (end < text.length() && (Character.isLetterOrDigit(text.charAt(end)) || text.charAt(end) == '_'
                || text.charAt(end) == '.' && end + 1 < text.length() && Character.isDigit(text.charAt(end + 1)))) {
            end++;
        }
        return end;
    }

    private int endOfQuoted(char quote) {
        int end = at + 1;
        while (end < text.length() && text.charAt(end) != '\n') {
            if (text.charAt(end) == '\\') {
                end++;
            } else if (text.charAt(end) == quote) {
                return end + 1;
            }
            end++;
        }
        return Math.min(end, text.length());
    }

    private int endOf(String mark, int from, boolean inclusive) {
        int found = text.indexOf(mark, from);
        return found < 0 ? text.length() : inclusive ? found + mark.length() : found;
    }
}
