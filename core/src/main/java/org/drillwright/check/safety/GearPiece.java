package org.drillwright.check.safety;

/**
 * A piece of gear that a phrase can make necessary (Technical Rules t.20.2, t.64.5). A mask and a glove are those of the
 * drill's weapon: that the sabre has its own is said on no list in the hall (common practice, no source).
 */
enum GearPiece {
    MASK("mask"),
    JACKET("jacket"),
    UNDERARM_PROTECTOR("underarm protector"),
    GLOVE("glove");

    private final String words;

    GearPiece(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
