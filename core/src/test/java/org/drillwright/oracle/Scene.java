package org.drillwright.oracle;

/**
 * How two stand, at one moment.
 *
 * @param guard the guard of the start, to which one recovers
 * @param engagedFirst whether the blades touched at the start
 * @param one the leader
 * @param two the follower
 * @param measure foot actions to touch
 * @param contact the line in which the blades touch; {@code apart}, or {@code ?} if nobody has said
 * @param holder whose the contact is: 1, 2, or 0 for nobody
 * @param attacked at whom an attack is under way: 1, 2, or 0
 * @param line where it comes
 * @param right who has parried and may riposte: 1, 2, or 0
 * @param parry the position of that parry
 */
record Scene(
        String guard,
        boolean engagedFirst,
        Person one,
        Person two,
        int measure,
        String contact,
        int holder,
        int attacked,
        String line,
        int right,
        String parry) {

    static final String APART = "apart";
    static final String UNSAID = "?";

    /** Both on one guard, at lunge distance. */
    static Scene start(String guard, boolean engaged) {
        return new Scene(
                guard,
                engaged,
                Person.onGuard(guard),
                Person.onGuard(guard),
                1,
                engaged ? Tables.protects(guard) : APART,
                0,
                0,
                "",
                0,
                "");
    }

    Person person(int who) {
        return who == 1 ? one : two;
    }

    boolean touching() {
        return !contact.equals(APART) && !contact.equals(UNSAID);
    }

    Scene with(int who, Person person) {
        return new Scene(
                guard,
                engagedFirst,
                who == 1 ? person : one,
                who == 2 ? person : two,
                measure,
                contact,
                holder,
                attacked,
                line,
                right,
                parry);
    }

    Scene at(int now) {
        return new Scene(guard, engagedFirst, one, two, now, contact, holder, attacked, line, right, parry);
    }

    Scene blades(String now, int whose) {
        return new Scene(guard, engagedFirst, one, two, measure, now, whose, attacked, line, right, parry);
    }

    Scene attack(int at, String where) {
        return new Scene(guard, engagedFirst, one, two, measure, contact, holder, at, where, right, parry);
    }

    Scene mayRiposte(int who, String by) {
        return new Scene(guard, engagedFirst, one, two, measure, contact, holder, attacked, line, who, by);
    }

    Scene noRight(int who) {
        return right == who ? mayRiposte(0, "") : this;
    }
}
