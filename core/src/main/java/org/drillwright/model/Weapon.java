package org.drillwright.model;

/** The weapon of a drill. */
public enum Weapon {
    FOIL("foil"),
    EPEE("epee"),
    SABRE("sabre"),
    /** Footwork and courtesy without a weapon in the hand. */
    NONE("none");

    private final String word;

    Weapon(String word) {
        this.word = word;
    }

    /** The word that a drill file uses. */
    public String word() {
        return word;
    }
}
