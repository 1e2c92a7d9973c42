package org.drillwright.print.text;

import java.lang.Character.UnicodeScript;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** What the letters of a text tell of it, whoever reads it: its direction, and its language where they are of no other. */
public final class Lettering {

    private static final String UNDETERMINED = "und";

    /** Scripts that are written in one language by far the most; of others letters tell none. */
    private static final Map<UnicodeScript, String> LANGUAGES = Map.of(
            UnicodeScript.HEBREW, "he",
            UnicodeScript.GREEK, "el",
            UnicodeScript.HANGUL, "ko",
            UnicodeScript.HIRAGANA, "ja",
            UnicodeScript.KATAKANA, "ja");

    private Lettering() {}

    /** Whether most letters are read from right to left. */
    public static boolean isRightToLeft(String text) {
        long letters = text.codePoints().filter(Character::isLetter).count();
        return 2
                        * text.codePoints()
                                .filter(Character::isLetter)
                                .filter(GlyphCoverage::isRightToLeft)
                                .count()
                > letters;
    }

    /** The tag (BCP 47) of a text most of whose letters are not Latin: 'und' where they are of several languages. */
    public static Optional<String> language(String text) {
        List<UnicodeScript> scripts = text.codePoints()
                .filter(Character::isLetter)
                .mapToObj(UnicodeScript::of)
                .filter(script -> script != UnicodeScript.LATIN)
                .toList();
        long letters = text.codePoints().filter(Character::isLetter).count();
        return 2L * scripts.size() > letters
                ? Optional.of(scripts.stream()
                        .map(LANGUAGES::get)
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElse(UNDETERMINED))
                : Optional.empty();
    }

    /** Whether a tag is one that letters tell, and so not that of a text in Latin ones. */
    public static boolean tells(String tag) {
        return tag.equals(UNDETERMINED) || LANGUAGES.containsValue(tag);
    }
}
