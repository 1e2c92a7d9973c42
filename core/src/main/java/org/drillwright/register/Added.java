package org.drillwright.register;

/**
 * What is added to a record.
 *
 * @param text the lines as they are written; empty for none
 * @param told how many facts they tell
 * @param takenBack how many they take back
 * @param again whether the same class was on record already
 */
public record Added(String text, int told, int takenBack, boolean again) {

    static final Added NOTHING = new Added("", 0, 0, false);

    /** Whether the record tells all of it already. */
    public boolean isNothing() {
        return text.isEmpty();
    }
}
