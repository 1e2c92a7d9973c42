package org.drillwright.oracle;

/**
 * How two stand, at one moment.
 *
 * @param one the leader
 * @param two the follower
 * @param measure foot actions to touch
 * @param attacked at whom an attack is under way: 1, 2, or 0
 * @param line where it comes
 * @param right who has parried and may riposte: 1, 2, or 0
 * @param parry the position in which that one's hand stands since
 */
record Scene(
        Terms terms,
        Person one,
        Person two,
        int measure,
        Blades blades,
        int attacked,
        String line,
        int right,
        String parry) {

    /** Both on guard, at lunge distance. */
    static Scene start(Terms terms) {
        return new Scene(
                terms,
                Person.onGuard(terms.guard()),
                Person.onGuard(terms.guardOfOther()),
                1,
                Blades.first(terms.engagedFirst() ? Tables.protects(terms.guard()) : Blades.APART),
                0,
                "",
                0,
                "");
    }

    Person person(int who) {
        return who == 1 ? one : two;
    }

    boolean touching() {
        return blades.touch();
    }

    /** A line named from the leader, named from somebody. */
    String from(int who, String line) {
        return who == 1 ? line : terms.across(line);
    }

    /** The contact, named from one side's own body; what is no line stays as it is. */
    String contact(int who) {
        return touching() ? from(who, blades.contact()) : blades.contact();
    }

    Scene with(int who, Person person) {
        return new Scene(
                terms, who == 1 ? person : one, who == 2 ? person : two, measure, blades, attacked, line, right, parry);
    }

    Scene at(int now) {
        return new Scene(terms, one, two, now, blades, attacked, line, right, parry);
    }

    Scene with(Blades now) {
        return new Scene(terms, one, two, measure, now, attacked, line, right, parry);
    }

    /** The blades touch in a line named from one side, and are that side's. */
    Scene touchingIn(String ownLine, int whose) {
        return with(blades.now(from(whose, ownLine), whose));
    }

    Scene attack(int at, String where) {
        return new Scene(terms, one, two, measure, blades, at, where, right, parry);
    }

    Scene mayRiposte(int who, String by) {
        return new Scene(terms, one, two, measure, blades, attacked, line, who, by);
    }

    /** A hand that may riposte goes elsewhere with the blade and may still: a delayed riposte (Technical Rules t.11). */
    Scene ripostesFrom(int who, String position) {
        return right == who ? mayRiposte(who, position) : this;
    }

    Scene noRight(int who) {
        return right == who ? mayRiposte(0, "") : this;
    }
}
