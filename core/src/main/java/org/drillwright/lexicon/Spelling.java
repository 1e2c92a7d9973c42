package org.drillwright.lexicon;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** How words are compared: without capitals, without accents. */
public final class Spelling {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    private Spelling() {}

    public static String fold(String word) {
        if (isAscii(word)) {
            return word.toLowerCase(Locale.ROOT);
        }
        String apart = Normalizer.normalize(
                word.replace("œ", "oe").replace("æ", "ae").replace("ß", "ss").replace('\u2019', '\''),
                Normalizer.Form.NFD);
        return MARKS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT);
    }

    /** Without capitals only. */
    static String withAccents(String word) {
        return Normalizer.normalize(word, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    /** Most words are, and need no taking apart. */
    private static boolean isAscii(String word) {
        for (int at = 0; at < word.length(); at++) {
            if (word.charAt(at) > 0x7f) {
                return false;
            }
        }
        return true;
    }
}
