package org.drillwright.source;

import java.util.function.Supplier;

/**
 * Characters that nobody sees and that turn the direction of a text (Unicode Annex 9, section 2): the embeddings, overrides and
 * isolates, which no drill needs; and the marks that stand in for a letter of one direction, which have their place only
 * where letters are written from right to left.
 */
public final class DirectionMarks {

    private DirectionMarks() {}

    /**
     * Whether a character turns a text in which it has no place.
     *
     * @param around the text it stands in; asked for only where that matters
     */
    public static boolean turns(int point, Supplier<String> around) {
        return isExplicit(point) || (isImplicit(point) && !isWrittenFromTheRight(around.get()));
    }

    private static boolean isExplicit(int point) {
        return (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069);
    }

    private static boolean isImplicit(int point) {
        return point == 0x200E || point == 0x200F || point == 0x061C;
    }

    private static boolean isWrittenFromTheRight(String text) {
        return text.codePoints()
                .filter(Character::isLetter)
                .map(Character::getDirectionality)
                .anyMatch(way -> way == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                        || way == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC);
    }
}
