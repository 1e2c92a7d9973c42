package org.drillwright.print.diagram.figure;

import org.drillwright.model.Side;
import org.drillwright.print.frame.Ink;

/** A person all in black or all in white: the leader and the follower. */
enum Tone {
    BLACK,
    WHITE;

    public static Tone of(Side side) {
        return side == Side.LEADER ? BLACK : WHITE;
    }

    /** Of jacket, breeches, mask and guard. */
    Ink cloth() {
        return this == BLACK ? Ink.BLACK : Ink.WHITE;
    }

    /** Of the glove and the mesh of the mask, which stand out. */
    Ink contrast() {
        return this == BLACK ? Ink.WHITE : Ink.BLACK;
    }
}
