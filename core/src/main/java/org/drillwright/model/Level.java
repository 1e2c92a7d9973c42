package org.drillwright.model;

/**
 * A level of a school. Rules read its two settings, never its name.
 *
 * @param turns how much a turn may ask
 * @param blades what blades may do
 */
public record Level(String name, Turns turns, Blades blades) {

    /** How much one turn may ask. */
    public enum Turns {
        /** One action. */
        ONE("one"),
        /** One action, or one with what is joined to it. */
        JOINED("joined"),
        /** Whatever the author writes. */
        FREE("free");

        private final String word;

        Turns(String word) {
            this.word = word;
        }

        /** The word that a school file uses. */
        public String word() {
            return word;
        }
    }

    /** What blades may do. */
    public enum Blades {
        /** No blade crosses another and nobody is pointed at. */
        NONE("none"),
        /** Blades meet, each time by the count. */
        BY_THE_COUNT("by-the-count"),
        /** Blades are free. */
        FREE("free");

        private final String word;

        Blades(String word) {
            this.word = word;
        }

        /** The word that a school file uses. */
        public String word() {
            return word;
        }
    }
}
