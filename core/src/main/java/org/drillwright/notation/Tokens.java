package org.drillwright.notation;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.source.Span;

/** Cuts a text into words and stops. Hyphens and apostrophes part words; capitals and accents are folded. */
final class Tokens {

    private static final Pattern PIECE = Pattern.compile("[\\p{L}\\p{M}]+|\\p{N}+|[.;:,!?()/\u2014\u2013]");
    private static final Pattern MARKS = Pattern.compile("\\p{M}+");

    /** Words of an older or another usage, each with the one that the vocabulary is written in. */
    private static final Map<String, String> USAGE =
            Map.of("upon", "on", "beneath", "under", "underneath", "under", "pace", "step", "paces", "steps");

    private Tokens() {}

    static List<Token> of(String text) {
        List<Token> tokens = new ArrayList<>();
        Matcher piece = PIECE.matcher(text);
        while (piece.find()) {
            String word = piece.group();
            String folded = fold(word);
            tokens.add(new Token(
                    USAGE.getOrDefault(folded, folded),
                    new Span(piece.start(), piece.end()),
                    Character.isLetterOrDigit(word.codePointAt(0))));
        }
        return tokens;
    }

    static String fold(String word) {
        if (isAscii(word)) {
            return word.toLowerCase(Locale.ROOT);
        }
        String apart = Normalizer.normalize(word.replace("œ", "oe").replace("æ", "ae"), Normalizer.Form.NFD);
        return MARKS.matcher(apart).replaceAll("").toLowerCase(Locale.ROOT);
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
