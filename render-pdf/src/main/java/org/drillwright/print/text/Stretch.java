package org.drillwright.print.text;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A part of a run that is set in one way: letters that stand as they are, whatever stands beside them, one by one; those
 * that change form, order or place by what stands beside them, a word at once.
 *
 * @param shaped whether it is a word of such letters
 */
public record Stretch(String text, boolean shaped) {

    /** No mark that stands over or under another letter comes before this. */
    private static final int FIRST_MARK = 0x0300;

    private static final int TATWEEL = 0x0640;

    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;

    /** Scripts whose letters stand side by side as they are written. */
    private static final Set<UnicodeScript> SINGLE = Set.of(
            UnicodeScript.COMMON,
            UnicodeScript.INHERITED,
            UnicodeScript.UNKNOWN,
            UnicodeScript.LATIN,
            UnicodeScript.GREEK,
            UnicodeScript.CYRILLIC,
            UnicodeScript.ARMENIAN,
            UnicodeScript.GEORGIAN,
            UnicodeScript.CHEROKEE,
            UnicodeScript.ETHIOPIC,
            UnicodeScript.TIFINAGH,
            UnicodeScript.HEBREW,
            UnicodeScript.HAN,
            UnicodeScript.BOPOMOFO,
            UnicodeScript.HIRAGANA,
            UnicodeScript.KATAKANA,
            UnicodeScript.HANGUL,
            UnicodeScript.YI);

    /** The whole of a run, in the order of reading. Spaces and numbers are never in a word that is shaped. */
    public static List<Stretch> of(String run) {
        if (run.chars().allMatch(unit -> unit < FIRST_MARK)) {
            return List.of(new Stretch(run, false));
        }
        List<Stretch> stretches = new ArrayList<>();
        int start = 0;
        while (start < run.length()) {
            int end = wordEnd(run, start);
            String word = run.substring(start, end);
            boolean shaped = isShaped(word);
            int last = stretches.size() - 1;
            if (!shaped && last >= 0 && !stretches.get(last).shaped()) {
                stretches.set(last, new Stretch(stretches.get(last).text() + word, false));
            } else {
                stretches.add(new Stretch(word, shaped));
            }
            start = end;
        }
        return List.copyOf(stretches);
    }

    /** Whether a character is seen only by what it does to its neighbours. */
    public static boolean isJoiner(int codePoint) {
        return codePoint == NON_JOINER || codePoint == JOINER;
    }

    /** Whether a letter is set alike wherever it stands, so that joiners beside it do nothing. */
    static boolean standsAlone(int codePoint) {
        return SINGLE.contains(script(codePoint));
    }

    /** Letters of one script, with their marks; or a single character of none. */
    private static int wordEnd(String run, int start) {
        UnicodeScript script = script(run.codePointAt(start));
        int at = start + Character.charCount(run.codePointAt(start));
        while (at < run.length()) {
            int codePoint = run.codePointAt(at);
            boolean same = script(codePoint) == script && script != UnicodeScript.COMMON;
            if (!same && !isMark(codePoint) && !isJoiner(codePoint)) {
                break;
            }
            at += Character.charCount(codePoint);
        }
        return at;
    }

    private static boolean isShaped(String word) {
        UnicodeScript script = script(word.codePointAt(0));
        boolean marked = word.codePoints().skip(1).anyMatch(Stretch::isMark);
        boolean formed = script == UnicodeScript.ARABIC
                && word.codePoints()
                        .allMatch(letter -> letter == TATWEEL
                                || letter == NON_JOINER
                                || !Joined.formsOf(letter).isEmpty());
        return marked || !(formed || SINGLE.contains(script));
    }

    /** Whether a character stands over, under or beside another as a part of it. */
    public static boolean isMark(int codePoint) {
        int type = Character.getType(codePoint);
        return type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.ENCLOSING_MARK;
    }

    /** Digits of a script are in no word: they are read and placed by themselves. */
    private static UnicodeScript script(int codePoint) {
        if (codePoint == TATWEEL) {
            return UnicodeScript.ARABIC;
        }
        return Character.isDigit(codePoint) ? UnicodeScript.COMMON : UnicodeScript.of(codePoint);
    }
}
