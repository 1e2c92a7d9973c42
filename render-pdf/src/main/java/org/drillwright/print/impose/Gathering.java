package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Quarter;

/**
 * Pages of a book, two on each side of sheets that lie on their side: printed on both, turned over the short edge, and
 * folded in the middle one inside the other. Thick books are folded in several parts, each of as many sheets.
 *
 * @param sides of the sheets, the front of each before its back
 * @param order for each page that is not blank, as the sides show them, its place in the order of reading, from 0
 * @param sheets how many are folded one inside the other
 */
public record Gathering(List<Frame> sides, List<Integer> order, int sheets) {

    private static final int ON_A_SHEET = 4;

    /** More sheets do not lie flat, and no stapler goes through them; common practice, no source. */
    private static final int MOST_SHEETS = 20;

    public Gathering {
        sides = List.copyOf(sides);
        order = List.copyOf(order);
    }

    /** @param pages all of one size, the first at the right when the book is opened */
    public static Gathering of(List<Frame> pages) {
        return of(pages, /* rightToLeft= */ false);
    }

    /**
     * A book that is read from the right opens the other way.
     *
     * @param pages all of one size, the first at the left when such a book is opened
     */
    public static Gathering of(List<Frame> pages, boolean rightToLeft) {
        int needed = (pages.size() + ON_A_SHEET - 1) / ON_A_SHEET;
        int parts = (needed + MOST_SHEETS - 1) / MOST_SHEETS;
        int sheets = (needed + parts - 1) / parts;
        Folding folding = new Folding(pages, rightToLeft);
        for (int part = 0; part < parts; part++) {
            folding.fold(part * sheets * ON_A_SHEET, sheets * ON_A_SHEET);
        }
        return new Gathering(folding.sides, folding.order, sheets);
    }

    private static final class Folding {

        private final List<Frame> pages;
        private final boolean rightToLeft;
        private final List<Frame> sides = new ArrayList<>();
        private final List<Integer> order = new ArrayList<>();

        Folding(List<Frame> pages, boolean rightToLeft) {
            this.pages = pages;
            this.rightToLeft = rightToLeft;
        }

        /** The outermost sheet first. */
        private void fold(int from, int count) {
            for (int out = 0; out < count / 2; out += 2) {
                side(from + count - 1 - out, from + out);
                side(from + out + 1, from + count - 2 - out);
            }
        }

        /** @param left the page at the left, if the book opens to the left */
        private void side(int left, int right) {
            Frame like = pages.get(0);
            List<Node> placed = new ArrayList<>();
            place(rightToLeft ? right : left, 0, placed);
            place(rightToLeft ? left : right, like.width(), placed);
            sides.add(new Frame(2 * like.width(), like.height(), like.clear(), List.of(), placed));
        }

        private void place(int page, double x, List<Node> into) {
            if (page < pages.size() && !pages.get(page).content().isEmpty()) {
                into.add(new Node.Placed(x, 0, Quarter.UP, pages.get(page)));
                order.add((int) pages.subList(0, page).stream()
                        .filter(before -> !before.content().isEmpty())
                        .count());
            }
        }
    }
}
