package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.drillwright.print.frame.Face;

/**
 * Which characters can be printed: those that every cut of the family has. Of scripts from right to left Hebrew and Arabic
 * are set, without points; others, and points that stand under or over letters, would need shaping that is not done here: they
 * count as not covered.
 */
public final class Coverage {

    private static final Set<Byte> RIGHT_TO_LEFT =
            Set.of(Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);

    /** Latin letters with their accents stand before this. */
    private static final int PLAIN = 0x180;

    private static final List<Face> FACES = List.of(Face.values());

    private final Typefaces faces;

    public Coverage(Typefaces faces) {
        this.faces = faces;
    }

    /** The code points of a text that cannot be printed, each once, in order. */
    public List<Integer> missing(String text) {
        List<Integer> missing = new ArrayList<>();
        String clean = Wording.clean(text);
        for (int at = 0; at < clean.length(); ) {
            int codePoint = clean.codePointAt(at);
            if (!covers(codePoint) && !missing.contains(codePoint)) {
                missing.add(codePoint);
            }
            at += Character.charCount(codePoint);
        }
        return missing;
    }

    /** Whether a text is of letters that every Latin typeface has: then there is nothing to look for. */
    public static boolean isPlain(String text) {
        return text.chars().allMatch(unit -> unit < PLAIN);
    }

    public static boolean isRightToLeft(int codePoint) {
        return RIGHT_TO_LEFT.contains(Character.getDirectionality(codePoint));
    }

    /** Scripts whose letters change order or shape by what stands beside them; a font alone would set them wrongly. */
    private static final Set<Character.UnicodeScript> REORDERED = Set.of(
            Character.UnicodeScript.DEVANAGARI,
            Character.UnicodeScript.BENGALI,
            Character.UnicodeScript.GURMUKHI,
            Character.UnicodeScript.GUJARATI,
            Character.UnicodeScript.ORIYA,
            Character.UnicodeScript.TAMIL,
            Character.UnicodeScript.TELUGU,
            Character.UnicodeScript.KANNADA,
            Character.UnicodeScript.MALAYALAM,
            Character.UnicodeScript.SINHALA,
            Character.UnicodeScript.KHMER,
            Character.UnicodeScript.MYANMAR,
            Character.UnicodeScript.TIBETAN,
            Character.UnicodeScript.MONGOLIAN);

    /** Whether letters of a script that is not set, with any font: they would have to be joined or put in place. */
    public static boolean isShaped(int codePoint) {
        if (REORDERED.contains(Character.UnicodeScript.of(codePoint))) {
            return true;
        }
        boolean hebrew = Character.UnicodeScript.of(codePoint) == Character.UnicodeScript.HEBREW;
        boolean point = Character.getType(codePoint) == Character.NON_SPACING_MARK;
        return point
                ? hebrew || isArabic(codePoint)
                : !hebrew
                        && isRightToLeft(codePoint)
                        && Joined.formsOf(codePoint).isEmpty();
    }

    private static boolean isArabic(int codePoint) {
        return Character.UnicodeBlock.ARABIC.equals(Character.UnicodeBlock.of(codePoint));
    }

    private boolean covers(int codePoint) {
        if (codePoint == Wording.SOFT_HYPHEN || codePoint == Wording.BREAK_HERE) {
            return true;
        }
        List<Integer> forms = Joined.formsOf(codePoint);
        if (!forms.isEmpty()) {
            return forms.stream().allMatch(this::hasGlyph);
        }
        if (isShaped(codePoint)) {
            return false;
        }
        return hasGlyph(codePoint);
    }

    private boolean hasGlyph(int codePoint) {
        return FACES.stream().allMatch(face -> faces.of(face).covers(codePoint));
    }
}
