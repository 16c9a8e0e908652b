package org.calicograph.desk.code;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/** Which bracket of a Java text belongs to which; those in strings and remarks count for nothing. */
final class Brackets {

    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";

    private final Map<Integer, Integer> partners = new HashMap<>();

    private Brackets() { }

    static Brackets in(String text) {
        BitSet hidden = new BitSet();
        for (Token token : JavaLexer.tokens(text)) {
            if (token.kind() == Token.Kind.TEXT || token.kind() == Token.Kind.REMARK) {
                hidden.set(token.start(), token.end());
            }
        }
        Brackets found = new Brackets();
        Deque<Integer> open = new ArrayDeque<>();
        for (int i = 0; i < text.length(); i++) {
            if (hidden.get(i)) {
                continue;
            }
            int closes = CLOSING.indexOf(text.charAt(i));
            if (OPENING.indexOf(text.charAt(i)) >= 0) {
                open.push(i);
            } else if (closes >= 0 && !open.isEmpty() && text.charAt(open.peek()) == OPENING.charAt(closes)) {
                int start = open.pop();
                found.partners.put(start, i);
                found.partners.put(i, start);
            }
        }
        return found;
    }

    /** The offset of the bracket that belongs to the one at this offset. */
    OptionalInt partner(int offset) {
        Integer other = partners.get(offset);
        return other == null ? OptionalInt.empty() : OptionalInt.of(other);
    }
}
