package org.calicograph.desk.code;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.calicograph.desk.opened.Finder;
import org.fxmisc.richtext.model.StyleSpans;
import org.fxmisc.richtext.model.StyleSpansBuilder;

/** How each character of a code cell looks: its token, whether something is wrong with it, whether it is a bracket of the pair at the caret. */
final class Colouring {

    private Colouring() { }

    /**
     * @param caret  the offset of the caret, below 0 for none
     * @param sought words whose places are marked; may be empty
     */
    static StyleSpans<Collection<String>> of(String text, List<Marks.Mark> marks, int caret, String sought) {
        Token.Kind[] kinds = new Token.Kind[text.length()];
        for (Token token : JavaLexer.tokens(text)) {
            for (int i = token.start(); i < token.end(); i++) {
                kinds[i] = token.kind();
            }
        }
        boolean[] wrong = new boolean[text.length()];
        for (Marks.Mark mark : marks) {
            for (int i = mark.start(); i < Math.min(mark.end(), text.length()); i++) {
                wrong[i] = true;
            }
        }
        boolean[] paired = pair(text, caret);
        boolean[] found = new boolean[text.length()];
        Finder.places(text, sought).forEach(at -> Arrays.fill(found, at, at + sought.length(), true));
        StyleSpansBuilder<Collection<String>> spans = new StyleSpansBuilder<>();
        int start = 0;
        for (int i = 1; i <= text.length(); i++) {
            if (i == text.length() || kinds[i] != kinds[start] || wrong[i] != wrong[start] || paired[i] != paired[start]
                    || found[i] != found[start]) {
                spans.add(classes(kinds[start], wrong[start], paired[start], found[start]), i - start);
                start = i;
            }
        }
        if (text.isEmpty()) {
            spans.add(List.of(), 0);
        }
        return spans.create();
    }

    private static boolean[] pair(String text, int caret) {
        boolean[] paired = new boolean[text.length()];
        if (caret >= 0) {
            Brackets brackets = Brackets.in(text);
            OptionalInt other = brackets.partner(caret - 1);
            int one = caret - 1;
            if (other.isEmpty()) {
                other = brackets.partner(caret);
                one = caret;
            }
            if (other.isPresent()) {
                paired[one] = true;
                paired[other.getAsInt()] = true;
            }
        }
        return paired;
    }

    private static List<String> classes(Token.Kind kind, boolean wrong, boolean paired, boolean found) {
        List<String> names = new ArrayList<>();
        if (kind != null) {
            names.add("java-" + kind.name().toLowerCase(Locale.ROOT));
        }
        if (wrong) {
            names.add("wrong");
        }
        if (paired) {
            names.add("paired");
        }
        if (found) {
            names.add("found");
        }
        return List.copyOf(names);
    }
}
