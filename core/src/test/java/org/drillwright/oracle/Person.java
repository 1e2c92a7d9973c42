package org.drillwright.oracle;

/**
 * One of the two.
 *
 * @param lunged whether on the lunge
 * @param hand the position in which the hand stands, or stood when the arm went out
 * @param closes whether the hand closes the line of its position
 * @param out whether the arm is out
 * @param aims the line that the point is in, empty if none
 * @param struck whether this one has attacked before
 * @param comesBack whether the blade was beaten and comes back from it, so that it can be passed (Warford 1884, p. 18-19)
 */
record Person(
        boolean lunged, String hand, boolean closes, boolean out, String aims, boolean struck, boolean comesBack) {

    static Person onGuard(String hand) {
        return new Person(false, hand, true, false, "", false, false);
    }

    Person up(String guard) {
        return new Person(false, guard, true, false, "", struck, false);
    }

    Person in(String position) {
        return new Person(lunged, position, true, false, "", struck, false);
    }

    Person thrusting(String line, boolean lunging) {
        return new Person(lunged || lunging, hand, false, true, line, true, false);
    }

    /** The blade was met: it closes and threatens nothing, and the arm stays where it is. */
    Person met() {
        return new Person(lunged, hand, false, out, "", struck, false);
    }

    /** Met by a beat, and on its way back. */
    Person beaten() {
        return new Person(lunged, hand, false, out, "", struck, true);
    }

    boolean closesLine(String line) {
        return closes && !out && Tables.protects(hand).equals(line);
    }
}
