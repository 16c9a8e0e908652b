package org.calicograph.desk.code;

/** Calls of a method that stands in no class, made calls of one that does. */
public final class Calls {

    private Calls() { }

    /** The text with {@code wave(…)} become {@code Waves.wave(…)}; calls on another thing, strings and remarks stay. */
    public static String qualified(String text, String method, String owner) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (Token token : JavaLexer.tokens(text)) {
            if (token.kind() == Token.Kind.CALL && text.substring(token.start(), token.end()).equals(method) && !text.substring(0, token.start()).stripTrailing().endsWith(".")) {
                out.append(text, from, token.start()).append(owner).append('.');
                from = token.start();
            }
        }
        return out.append(text.substring(from)).toString();
    }
}
