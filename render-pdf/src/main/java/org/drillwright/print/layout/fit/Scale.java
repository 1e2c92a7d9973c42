package org.drillwright.print.layout.fit;

import java.util.List;
import java.util.OptionalDouble;
import org.drillwright.model.CardSize;

/**
 * The five sizes of type of a card, fixed by how far away it is read and never by what it says. By the height of the
 * capitals of DejaVu Sans Condensed, 0.729 of the size, and 16 minutes of arc, the least that ISO 9241-3 allows, turns
 * are read in the pocket scale from 0.5 m, in the hand from 0.6, on a ring from 0.75, on the wall from 1.3 and 2.2.
 */
public enum Scale {
    POCKET(19, 10.5, 12.5, 9.5, 11.5, 7.5, 9.25, 7, 8.5),
    HAND(24, 13, 15.5, 11, 13, 9, 10.5, 7.5, 9),
    RING(34, 18, 21, 14, 17, 11, 13.5, 8.5, 10.5),
    WALL_A4(52, 30, 35, 24, 28, 16, 19, 11, 13.5),
    WALL_A3(76, 42, 48, 39, 44, 20, 24, 14, 17),
    /** Pages of a booklet, read at 0.35 to 0.45 m. */
    PAGE(26, 17, 20, 10.5, 13, 9, 11, 8.5, 10.5),
    /** The same 1.2 times as large, a page to a sheet. */
    LARGE_PAGE(31.2, 20.4, 24, 12.6, 15.6, 10.8, 13.2, 10.2, 12.6);

    private final double number;
    private final double title;
    private final double titleLeading;
    private final double turns;
    private final double turnsLeading;
    private final double small;
    private final double smallLeading;
    private final double foot;
    private final double footLeading;

    Scale(
            double number,
            double title,
            double titleLeading,
            double turns,
            double turnsLeading,
            double small,
            double smallLeading,
            double foot,
            double footLeading) {
        this.number = number;
        this.title = title;
        this.titleLeading = titleLeading;
        this.turns = turns;
        this.turnsLeading = turnsLeading;
        this.small = small;
        this.smallLeading = smallLeading;
        this.foot = foot;
        this.footLeading = footLeading;
    }

    public static Scale of(CardSize card) {
        return switch (card) {
            case A7, INDEX_3X5 -> POCKET;
            case A6, INDEX_4X6, QUARTER_LETTER -> HAND;
            case A5, INDEX_5X8, HALF_LETTER -> RING;
            case WALL_A4 -> WALL_A4;
            case WALL_A3 -> WALL_A3;
        };
    }

    /** For who sees badly: the next scale; the largest stays. */
    public Scale larger() {
        return switch (this) {
            case POCKET -> HAND;
            case HAND -> RING;
            case RING -> WALL_A4;
            case WALL_A4, WALL_A3 -> WALL_A3;
            case PAGE, LARGE_PAGE -> LARGE_PAGE;
        };
    }

    /**
     * From how far the turns can be found and read on a wall, in metres: the height of capitals × 300, after DIN 4844-1;
     * empty for what is held.
     */
    public OptionalDouble readableFrom() {
        return switch (this) {
            case WALL_A4 -> OptionalDouble.of(1.8);
            case WALL_A3 -> OptionalDouble.of(3);
            case POCKET, HAND, RING, PAGE, LARGE_PAGE -> OptionalDouble.empty();
        };
    }

    /** The numbers of the counts, in points. */
    public double number() {
        return number;
    }

    public TypeSize title() {
        return new TypeSize(title, titleLeading);
    }

    /** What each one does. */
    public TypeSize turns() {
        return new TypeSize(turns, turnsLeading);
    }

    /** Everything else that is read. */
    public TypeSize small() {
        return new TypeSize(small, smallLeading);
    }

    public TypeSize foot() {
        return new TypeSize(foot, footLeading);
    }

    /** All sizes of type on a card, in points. */
    public List<Double> sizes() {
        return List.of(number, title, turns, small, foot);
    }
}
