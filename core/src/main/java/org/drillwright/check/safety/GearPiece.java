package org.drillwright.check.safety;

/** A piece of gear that a phrase can make necessary (Technical Rules t.20.2, t.64.5; sabre gear: common practice). */
enum GearPiece {
    MASK("mask"),
    JACKET("jacket"),
    UNDERARM_PROTECTOR("underarm protector"),
    GLOVE("glove"),
    SABRE_MASK("sabre mask"),
    SABRE_GLOVE("sabre glove");

    private final String words;

    GearPiece(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
