package org.drillwright.notation;

/** Distance in words. Behind the words stands the number of foot actions that it takes to touch. */
public enum Measure {
    CLOSE("close", -1),
    EXTENSION("extension", 0),
    LUNGE("lunge", 1),
    ADVANCE_LUNGE("advance-lunge", 2),
    OUT("out", 3);

    private final String word;
    private final int steps;

    Measure(String word, int steps) {
        this.word = word;
        this.steps = steps;
    }

    public String word() {
        return word;
    }

    /**
     * Foot actions to touch; for {@link #CLOSE} the greatest that it stands for, for {@link #OUT} the least that no other
     * measure names.
     */
    public int steps() {
        return steps;
    }

    public static Measure of(int steps) {
        if (steps < 0) {
            return CLOSE;
        }
        return steps >= OUT.steps ? OUT : values()[steps + 1];
    }

    static Measure named(String id) {
        for (Measure measure : values()) {
            if (measure.word.equals(id)) {
                return measure;
            }
        }
        throw new IllegalArgumentException("no measure " + id);
    }
}
