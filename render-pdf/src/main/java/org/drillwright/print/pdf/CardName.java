package org.drillwright.print.pdf;

/**
 * What a card's picture is called, the same each time: {@code parry-of-quarte-2-of-2-back.png}.
 *
 * @param drill the drill's id
 * @param card which of the drill's cards, from 1
 * @param of how many the drill has
 * @param back whether it is the card's back
 */
public record CardName(String drill, int card, int of, boolean back) {

    public CardName {
        if (card < 1 || card > of) {
            throw new IllegalArgumentException("card " + card + " of " + of);
        }
    }

    /** The file's name. */
    public String file() {
        return drill + (of > 1 ? "-" + card + "-of-" + of : "") + (back ? "-back" : "") + ".png";
    }
}
