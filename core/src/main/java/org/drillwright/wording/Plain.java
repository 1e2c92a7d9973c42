package org.drillwright.wording;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/** Folds a word for comparison: small letters, without accents. */
public final class Plain {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    private Plain() {}

    public static String fold(String word) {
        if (isAscii(word)) {
            return word.toLowerCase(Locale.ROOT).strip();
        }
        String apart = Normalizer.normalize(word, Normalizer.Form.NFD);
        return MARKS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT).strip();
    }

    private static boolean isAscii(String word) {
        for (int at = 0; at < word.length(); at++) {
            if (word.charAt(at) > 0x7F) {
                return false;
            }
        }
        return true;
    }
}
