package org.drillwright.print.text;

/** An author's words as they are set: composed characters, single spaces, nothing invisible but break marks. */
public final class Wording {

    /** A place where a word may be broken with a hyphen. */
    static final char SOFT_HYPHEN = '\u00AD';

    /** A place where a line may end without a hyphen. */
    static final char BREAK_HERE = '\u200B';

    /** Marks before which, or behind which, a space becomes one at which no line ends. */
    private static final String FRENCH_MARKS = "!?;:%\u00AB\u00BB";

    private Wording() {}

    public static String clean(String text) {
        return isClean(text) ? text : Cleaning.clean(text);
    }

    /**
     * Whether a text surely needs no cleaning. Most do not, and to know it costs less than to start up the machinery of
     * normal forms.
     */
    private static boolean isClean(String text) {
        char before = ' ';
        for (int at = 0; at < text.length(); at++) {
            char unit = text.charAt(at);
            boolean behindSpace = before == ' ' && (unit == ' ' || FRENCH_MARKS.indexOf(unit) >= 0);
            if (behindSpace || (unit == ' ' && before == '\u00AB') || !isSet(unit)) {
                return false;
            }
            before = unit;
        }
        return text.isEmpty() || before != ' ';
    }

    /** ASCII, Latin letters with their accents in one character, dashes and quotation marks: composed and visible. */
    private static boolean isSet(char unit) {
        return (unit >= ' ' && unit <= '~')
                || (unit >= '\u00A0' && unit < '\u0250')
                || (unit >= '\u2010' && unit <= '\u2027');
    }
}
