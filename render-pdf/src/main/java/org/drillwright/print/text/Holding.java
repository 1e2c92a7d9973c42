package org.drillwright.print.text;

import java.util.Set;
import java.util.regex.Pattern;

/** Where a line should not end though it could, and where it ends well: told from the words on both sides of a space. */
final class Holding {

    /** Units that are read with the number before them. */
    private static final Set<String> UNITS =
            Set.of("%", "°", "m", "cm", "mm", "km", "s", "min", "h", "kg", "g", "m/s", "in", "ft");

    /** Abbreviations that are read with the number behind them: pages, numbers, paragraphs, counts. */
    private static final Pattern BEFORE_NUMBER =
            Pattern.compile("(?i)\\(?(p|pp|n|no|nr|art|fig|t|vol|ch|cap|pag|§|n°|nº)\\.?");

    private static final Pattern NUMBER = Pattern.compile("[(\\[]?\\d[\\d.,/\u2013-]*");

    private static final Pattern LISTED = Pattern.compile("\\d+[,;]");

    private static final Pattern BEHIND = Pattern.compile("[.,;:)]+$");

    private static final String ENDS = ".!?…";

    private static final String CLOSES = ")»”’\"";

    private static final int SHORT = 3;

    private Holding() {}

    /**
     * How a line ends between two words.
     *
     * @param before the word before that one; empty if it is the first
     */
    static Chunk.Manner between(String before, String word, String next) {
        boolean opens = before.isEmpty() || endsSentence(before);
        if ((opens && letters(word) <= SHORT && !endsSentence(word))
                || isOneLetter(word)
                || isOneReading(before, word, next)) {
            return Chunk.Manner.PARTING;
        }
        char last = word.charAt(word.length() - 1);
        return ",;:".indexOf(last) >= 0 ? Chunk.Manner.PAUSING : Chunk.Manner.PLAIN;
    }

    /** Of a list of numbers the first two stay together: a long one must end somewhere. */
    private static boolean isOneReading(String before, String word, String next) {
        String bare = BEHIND.matcher(next).replaceAll("");
        boolean number = NUMBER.matcher(word).matches();
        return (number && UNITS.contains(bare))
                || (BEFORE_NUMBER.matcher(word).matches()
                        && NUMBER.matcher(bare).matches())
                || (LISTED.matcher(word).matches()
                        && NUMBER.matcher(bare).matches()
                        && !LISTED.matcher(before).matches())
                || "–".equals(next)
                || ("–".equals(word) && NUMBER.matcher(bare).matches());
    }

    /** Whether nothing but closing marks stands behind the mark that ends a sentence. */
    private static boolean endsSentence(String word) {
        int last = word.length() - 1;
        while (last >= 0 && CLOSES.indexOf(word.charAt(last)) >= 0) {
            last--;
        }
        return last >= 0 && ENDS.indexOf(word.charAt(last)) >= 0;
    }

    private static long letters(String word) {
        return word.codePoints().filter(Character::isLetterOrDigit).count();
    }

    private static boolean isOneLetter(String word) {
        return word.length() == Character.charCount(word.codePointAt(0)) && Character.isLetter(word.codePointAt(0));
    }
}
