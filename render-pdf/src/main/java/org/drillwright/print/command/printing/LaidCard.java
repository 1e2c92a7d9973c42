package org.drillwright.print.command.printing;

import org.drillwright.print.impose.Leaf;
import org.drillwright.print.pdf.CardName;

/**
 * One card, ready for paper.
 *
 * @param set the set it is printed as part of; empty if none
 * @param drill the drill's id
 * @param number which of the drill's cards, from 1
 * @param of how many the drill has
 */
public record LaidCard(String set, String drill, int number, int of, Leaf leaf) {

    CardName front() {
        return new CardName(drill, number, of, false);
    }

    CardName back() {
        return new CardName(drill, number, of, true);
    }
}
