package org.drillwright.print.text;

import java.text.Normalizer;
import java.util.regex.Pattern;

/** An author's words as they are set: composed characters, single spaces, nothing invisible but
 * break marks. */
public final class Wording {

    /** A place where a word may be broken with a hyphen. */
    static final char SOFT_HYPHEN = '\u00AD';

    /** A place where a line may end without a hyphen. */
    static final char BREAK_HERE = '\u200B';

    /** White space where a line may end: what Unicode calls so, without the no-break spaces. */
    private static final Pattern SPACES =
            Pattern.compile("[\\s\\u0085\\u1680\\u2000-\\u2006\\u2008-\\u200A\\u2028\\u2029\\u205F\\u3000]+");

    /** Joiners, variation selectors, direction marks: they have no glyph. U+2060 only forbids a break beside it. */
    private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cf}\\uFE00-\\uFE0F&&[^\\u00AD\\u200B]]");

    /** Spaces that French typography writes inside of guillemets and before high marks: no line ends there. */
    private static final Pattern FRENCH = Pattern.compile("(?<=[«‹]) | (?=[»›!?;:%])");

    /** Those of the high marks that ASCII has. */
    private static final String HIGH_MARKS = "!?;:%";

    private Wording() {}

    public static String clean(String text) {
        return isPlain(text) ? text : cleaned(text);
    }

    /** Letters, marks and single spaces of ASCII, none of which is replaced: most of what is set, and soon known. */
    private static boolean isPlain(String text) {
        char before = ' ';
        for (int at = 0; at < text.length(); at++) {
            char unit = text.charAt(at);
            boolean afterSpace = before == ' ' && (unit == ' ' || HIGH_MARKS.indexOf(unit) >= 0);
            if (unit < ' ' || unit > '~' || afterSpace) {
                return false;
            }
            before = unit;
        }
        return text.isEmpty() || before != ' ';
    }

    private static String cleaned(String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        String spaced = SPACES.matcher(composed).replaceAll(" ");
        String seen = INVISIBLE.matcher(spaced).replaceAll("").strip();
        return FRENCH.matcher(seen).replaceAll("\u00A0");
    }
}
