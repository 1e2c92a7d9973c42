package org.drillwright.oracle;

/**
 * The two blades, beside each other.
 *
 * @param contact the line in which they touch, named from the leader; {@code apart}, or {@code ?} if nobody has said
 * @param holder whose the contact is: 1, 2, or 0 for nobody
 * @param changedBy who has taken or changed it since somebody came on guard or parried: 1, 2, or 0
 * @param left the contact before that, named from the leader
 */
record Blades(String contact, int holder, int changedBy, String left) {

    static final String APART = "apart";
    static final String UNSAID = "?";

    static Blades first(String contact) {
        return new Blades(contact, 0, 0, "");
    }

    boolean touch() {
        return !contact.equals(APART) && !contact.equals(UNSAID);
    }

    boolean apart() {
        return contact.equals(APART);
    }

    /** The contact is here now, and whose. */
    Blades now(String line, int whose) {
        return new Blades(line, whose, changedBy, left);
    }

    /** Somebody takes the contact to a line. */
    Blades changed(String line, int who) {
        return new Blades(line, who, who, contact);
    }

    /** Whoever changed it, that is over. */
    Blades settled() {
        return new Blades(contact, holder, 0, "");
    }
}
