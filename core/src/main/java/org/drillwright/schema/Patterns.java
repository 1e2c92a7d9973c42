package org.drillwright.schema;

import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.read.Shape;
import org.drillwright.wording.Plain;

/**
 * Regular expressions for values between quotes, in what ECMA-262 (with its u flag) and Java read alike. White space is
 * spelt out: it is what the reader trims, and the two differ over {@code \s}.
 */
final class Patterns {

    private static final String BLANKS = " \\t\\n\\r\\u1680\\u2000-\\u2006\\u2008-\\u200a\\u205f\\u3000";
    private static final String BLANK = "[" + BLANKS + "]*";

    /** A text in which something stands. */
    static final String PRESENT = "[^" + BLANKS + "]";

    private static final int LATIN_END = 0x17F;

    private Patterns() {}

    private static String whole(String pattern) {
        return "^" + BLANK + "(?:" + pattern + ")" + BLANK + "$";
    }

    static String value(Shape.Value value) {
        return whole(
                switch (value) {
                    case SECONDS ->
                        "(?!0+(?:[.,]0+)?" + BLANK + "$)"
                                + "(?:(?:[0-9]{1,3}|[0-2][0-9]{3}|3[0-5][0-9]{2})(?:[.,][0-9]{1,3})?|3600(?:[.,]0{1,3})?)";
                    case METRES -> "[0-9]{1,3}(?:[.,][0-9]{1,2})?";
                    case METRES_ABOVE_0 -> "(?!0+(?:[.,]0+)?" + BLANK + "$)[0-9]{1,3}(?:[.,][0-9]{1,2})?";
                    case YES_OR_NO ->
                        List.of("true", "false", "yes", "no").stream()
                                .map(Patterns::eitherCase)
                                .collect(Collectors.joining("|"));
                    case DATE -> "[0-9]{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12][0-9]|3[01])";
                    case TIME -> "(?:[01][0-9]|2[0-3]):[0-5][0-9]";
                });
    }

    private static String eitherCase(String word) {
        return word.chars()
                .mapToObj(letter -> "[" + (char) letter + (char) Character.toUpperCase(letter) + "]")
                .collect(Collectors.joining());
    }

    /** Figures of a whole number, at most six of them. */
    static String whole(int least, int most) {
        String numbers = IntStream.rangeClosed(1, Integer.toString(most).length())
                .mapToObj(figures -> numbers(figures, least, most))
                .filter(some -> !some.isEmpty())
                .collect(Collectors.joining("|"));
        return whole("(?=[0-9]{1,6}" + BLANK + "$)0*(?:" + numbers + ")");
    }

    private static String numbers(int figures, int least, int most) {
        int first = figures == 1 ? 0 : (int) Math.pow(10, figures - 1);
        int last = (int) Math.pow(10, figures) - 1;
        if (least <= first && last <= most) {
            return figures == 1 ? "[0-9]" : "[1-9][0-9]{" + (figures - 1) + "}";
        }
        return IntStream.rangeClosed(Math.max(first, least), Math.min(last, most))
                .mapToObj(Integer::toString)
                .collect(Collectors.joining("|"));
    }

    static String word(Shape.Word word) {
        return whole(Stream.concat(
                        word.known().stream().map(known -> word.folded() ? folded(known) : exact(known)),
                        word.also().stream().map(Patterns::folded))
                .collect(Collectors.joining("|")));
    }

    private static String exact(String word) {
        return word.replaceAll("[\\^$\\\\.*+?()\\[\\]{}|/]", "\\\\$0");
    }

    private static String folded(String word) {
        return Plain.fold(word)
                .codePoints()
                .mapToObj(point -> Character.isLetter(point)
                        ? "[" + alike(point) + "][\\u0300-\\u036f]*"
                        : exact(Character.toString(point)))
                .collect(Collectors.joining());
    }

    /** The Latin letters that fold to a letter. */
    private static String alike(int letter) {
        IntPredicate folds = point -> Plain.fold(Character.toString(point)).equals(Character.toString(letter));
        return IntStream.concat(IntStream.rangeClosed('A', LATIN_END).filter(folds), IntStream.of(letter))
                .distinct()
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
