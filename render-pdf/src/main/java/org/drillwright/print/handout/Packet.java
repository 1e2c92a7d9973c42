package org.drillwright.print.handout;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.impose.Imposition;
import org.drillwright.print.impose.Leaf;
import org.drillwright.print.impose.SheetPlan;
import org.drillwright.print.layout.block.SheetNote;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.text.Typefaces;

/**
 * The pages of a packet that is printed on both sides: the cover on a sheet of its own, the cards at their true size, as
 * many as a sheet holds, to be cut out for the ring; and the table to sign on a sheet of its own.
 *
 * @param plan of two sides
 */
public record Packet(Cover cover, Leaf safety, List<Leaf> cards, SheetPlan plan) {

    public Packet {
        cards = List.copyOf(cards);
    }

    /** All pages, in the order in which they are printed. */
    public List<Frame> pages(Sheet sheet, Labels labels, Typefaces faces) {
        List<Leaf> leaves = new ArrayList<>(List.of(safety));
        leaves.addAll(cards);
        List<Frame> pages = new ArrayList<>(even(cover.pages(sheet, labels, faces), sheet));
        pages.addAll(Imposition.impose(leaves, plan, SheetNote.of(labels, faces)));
        List<String> titles = cover.drills().stream().map(Listed::title).toList();
        pages.addAll(even(new SignOff(sheet, labels, faces).pages(titles, pages.size() + 1, cover.document()), sheet));
        return pages;
    }

    /** Whether a sheet holds a card at all. */
    public boolean fits() {
        return cards.isEmpty() || Imposition.each(cards.get(0).front(), plan) > 0;
    }

    /** With a blank page at the end where the last sheet has a side left: what follows begins on a sheet of its own. */
    private static List<Frame> even(List<Frame> pages, Sheet sheet) {
        List<Frame> even = new ArrayList<>(pages);
        if (even.size() % 2 == 1) {
            even.add(sheet.blank());
        }
        return even;
    }
}
