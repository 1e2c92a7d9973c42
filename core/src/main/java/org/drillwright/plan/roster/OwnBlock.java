package org.drillwright.plan.roster;

import java.time.Duration;

/**
 * A part of a lesson that is the school's own: a warm-up, a game, a talk, a cool-down.
 *
 * @param length as long as it takes, getting there included
 * @param how what is done, for whoever takes the class; empty if nothing is said
 */
public record OwnBlock(String name, Duration length, Place place, String how) {

    /** Where in the lesson it stands. */
    public enum Place {
        /** In the place of the plain warm-up. */
        WARM_UP("warm-up"),
        /** Before the first drill. */
        BEFORE("before"),
        /** In the middle of the drills. */
        BETWEEN("between"),
        /** Behind the last drill. */
        AFTER("after"),
        /** Behind the last drill, where minutes are left; those that stand there take turns. */
        SPARE("spare");

        private final String word;

        Place(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }
}
