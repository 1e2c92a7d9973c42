package org.drillwright.print.text;

import java.text.Normalizer;
import java.util.regex.Pattern;

/** Composes characters, makes white space single, takes out what has no glyph. */
final class Cleaning {

    /** White space where a line may end: what Unicode calls so, without the no-break spaces. */
    private static final Pattern SPACES =
            Pattern.compile("[\\s\\u0085\\u1680\\u2000-\\u2006\\u2008-\\u200A\\u2028\\u2029\\u205F\\u3000]+");

    /** Joiners, variation selectors, direction marks: they have no glyph. U+2060 only forbids a break beside it. */
    private static final Pattern INVISIBLE =
            Pattern.compile("[\\p{Cf}\\uFE00-\\uFE0F&&[^\\u00AD\\u200B\\u200C\\u200D]]");

    /** Joiners between letters that look the same whatever stands beside them, or at the end of a word. */
    private static final Pattern IDLE = Pattern.compile("[\\u200C\\u200D]");

    /** Spaces that French typography writes inside of guillemets and before high marks: no line ends there. */
    private static final Pattern FRENCH = Pattern.compile("(?<=[«‹]) | (?=[»›!?;:%])");

    private Cleaning() {}

    static String clean(String text) {
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        String spaced = SPACES.matcher(composed).replaceAll(" ");
        String shown = INVISIBLE.matcher(spaced).replaceAll("");
        String seen = IDLE.matcher(shown)
                .replaceAll(joiner -> isIdle(shown, joiner.start()) ? "" : joiner.group())
                .strip();
        return FRENCH.matcher(seen).replaceAll("\u00A0");
    }

    private static boolean isIdle(String text, int at) {
        return at == 0 || Stretch.standsAlone(text.codePointBefore(at));
    }
}
