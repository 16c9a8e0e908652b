package org.calicograph.kernel.plain;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the compiler says, first line, in the words of somebody who sits beside: what is wrong, and what mends it. */
public final class CompilerWords {

    private record Way(Pattern said, Function<Matcher, String> plain) { }

    private static final List<Way> WAYS = List.of(
            way("reached end of file.*", "This ends too early: a name is missing behind a dot, or a bracket or a brace that was opened is not closed."),
            way("unclosed string literal.*|unclosed text block.*", "These words have no end. Put \" behind the last of them."),
            way("unclosed character literal.*|empty character literal.*", "A single ' holds one letter only. Put words between \"."),
            way("unclosed comment.*", "This remark has no end. Put */ behind it."),
            way("illegal character: '(.+)'.*", m -> "The letter " + m.group(1) + " means nothing here. " + quote(m.group(1))),
            way("illegal start of (?:expression|type).*", "Something is missing before this, or there is a sign too many. Look at what stands just before it."),
            way("(?:class, interface, enum, or record|class, interface, or enum) expected.*", "A brace is closed here that was not opened. Take one away, or open it above."),
            way("variable (\\w+) might not have been initialized.*", m -> m.group(1) + " may have no value here. Give it one where it is declared."),
            way("variable (\\w+) is already defined.*", m -> "There is a '" + m.group(1) + "' already. Take another name, or leave off the type to give the old one a new value."),
            way("method (\\w+)\\((.*)\\) is already defined.*", m -> "There is a method '" + m.group(1) + "' that takes the same already. Take another name."),
            way("not a statement.*", "This does nothing as it stands. Give its value to a variable, or call a method with it."),
            way("missing return statement.*", "The method can end here without a value. Add a return, with what it is to give."),
            way("unreachable statement.*", "Java never comes to this line: what stands above it always ends first. Move it up, or take it out."),
            way("invalid method declaration; return type required.*", "Say before the method's name what it gives, such as Block or Length; void if nothing."),
            way("bad operand types for binary operator '(.+)'.*", m -> "These two don't go with '" + m.group(1) + "'." + operator(m.group(1))),
            way("bad operand type (\\S+) for unary operator '(.+)'.*", m -> "'" + m.group(2) + "' can't stand before this kind of value."),
            way("(?:incomparable types: |incomparable types.*|incompatible operand types)(.*)", "These two can never be equal: they are of different kinds. Compare two of one kind."),
            way("(\\w+) cannot be dereferenced.*", m -> "A plain number has nothing behind a dot. Say in what it is first: inches(…), mm(…), degrees(…)."),
            way("array required, but (\\S+) found.*", m -> "Square brackets take one thing out of an array, and this is none. Of a list, take it with .get(…)."),
            way("cannot assign a value to final variable (\\w+).*", m -> "'" + m.group(1) + "' can't be given another value. Put the new one into a variable of another name."),
            way("local variables referenced from (?:a lambda expression|an inner class) must be final.*",
                    "What stands behind -> may only use names whose value never changes. Put the value into a new name just before, and use that."),
            way("cannot infer type for local variable (\\w+).*", m -> "Java can't tell what '" + m.group(1) + "' is to be. Write its kind in place of var, such as Length or Block, or give it a value."),
            way("non-static (?:method|variable) (\\w+).* cannot be referenced from a static context.*",
                    m -> "'" + m.group(1) + "' belongs to a thing, not to its kind. Put the thing before the dot, in place of the kind's name."),
            way("unreported exception (?:\\w+\\.)*(\\w+); must be caught or declared to be thrown.*", m -> "This may go wrong (" + m.group(1) + "). Put it into try { … } catch (" + m.group(1) + " e) { … }."),
            way("'\\.class' expected.*", "A kind of thing stands where a value is wanted. Leave the kind off; or, for a method of your own, say before its name what it gives."),
            way("(\\S+) has private access in (\\S+).*", m -> "'" + m.group(1) + "' is not for use from outside " + m.group(2) + ". Use one of the words that are offered behind the dot."),
            way("(\\S+) is abstract; cannot be instantiated.*", m -> "A " + m.group(1) + " isn't made with new. Use one of its own words, such as " + m.group(1) + ".of(…)."),
            way("integer number too large.*", "This number is too large for a whole one. Put L behind it, or write it with a decimal point."),
            way("malformed (?:floating-point|floating point) literal.*", "This is no number. Write it like 2.5."),
            way("'else' without 'if'.*|illegal start of expression: else.*", "There is an else without its if. Put the braces of the if right before it."),
            way("'catch' without 'try'.*|'finally' without 'try'.*", "There is a catch without its try."),
            way("break outside switch or loop.*|continue outside of loop.*", "There is nothing here to leave: this stands in no loop."),
            way("return outside method.*", "A return belongs into a method. The value of these lines is what the last of them gives: write it alone."),
            way("duplicate class: (\\S+).*", m -> "There is a class '" + m.group(1) + "' already. Take another name."),
            way("modifier (\\S+) not allowed here.*", m -> "'" + m.group(1) + "' can't stand here. Take it out."),
            way("recursive lambda body.*|self-reference in initializer.*", "This uses its own name before it has a value. Begin with a value that does without."),
            way("incompatible types: missing return value.*|incompatible types: unexpected return value.*", "The method says what it gives, and here it gives something else. Make the two agree."),
            way("'void' type not allowed here.*", "This gives no value, so nothing can be made of it here. Put it on a line of its own."),
            way("(?:class|interface|record|enum) (\\S+) is already defined.*", m -> "There is a '" + m.group(1) + "' already. Take another name."),
            way("constant expression required.*", "A case needs a value that is written out."),
            way("incompatible types: bad return type in (?:lambda expression|method reference).*", "What stands behind -> gives another kind of value than is wanted here."));

    private CompilerWords() { }

    private static Way way(String said, String plain) {
        return new Way(Pattern.compile("(?s)" + said), m -> plain);
    }

    private static Way way(String said, Function<Matcher, String> plain) {
        return new Way(Pattern.compile("(?s)" + said), plain);
    }

    private static String quote(String letter) {
        return letter.equals("\\u201c") || letter.equals("\\u201d") ? "Words stand between straight \"." : letter.equals("\\u2013") || letter.equals("\\u2212")
                ? "A minus is the short -." : "Take it out.";
    }

    private static String operator(String sign) {
        return switch (sign) {
            case "+" -> " Two lengths are added with .plus(…).";
            case "-" -> " One length is taken from another with .minus(…).";
            case "*" -> " A length is multiplied with .times(…).";
            case "/" -> " A length is divided with .dividedBy(…); how often one goes into another is .ratioTo(…).";
            case "<", ">", "<=", ">=" -> " Two lengths are compared with .compareTo(…).";
            default -> " Make them of one kind first.";
        };
    }

    /** The plain words for the first line of an objection; empty if it is none of those that are known. */
    public static Optional<String> plain(String line) {
        for (Way way : WAYS) {
            Matcher m = way.said.matcher(line);
            if (m.matches()) {
                return Optional.of(way.plain.apply(m));
            }
        }
        return Optional.empty();
    }
}
