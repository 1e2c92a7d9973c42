package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.drillwright.print.frame.Face;

/** Which characters can be printed: those that every cut of the family has, in each form in which they are set. */
public final class GlyphCoverage {

    private static final Set<Byte> RIGHT_TO_LEFT =
            Set.of(Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);

    /** Latin letters with their accents stand before this. */
    private static final int PLAIN = 0x180;

    private static final List<Face> FACES = List.of(Face.values());

    private final Typefaces faces;

    public GlyphCoverage(Typefaces faces) {
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

    private boolean covers(int codePoint) {
        return codePoint == Wording.SOFT_HYPHEN
                || codePoint == Wording.BREAK_HERE
                || Stretch.isJoiner(codePoint)
                || (hasGlyph(codePoint) && Joined.formsOf(codePoint).stream().allMatch(this::hasGlyph));
    }

    private boolean hasGlyph(int codePoint) {
        return FACES.stream().allMatch(face -> faces.of(face).covers(codePoint));
    }
}
