package org.drillwright.plan.rounds;

/** How a table was made. */
public enum Method {
    /** One line stays, the other moves one post a round. */
    TWO_LINES("two lines"),
    /** Those who know the drill move round a ring, one place a round. */
    RING("ring"),
    /** All rounds at once. */
    FACTOR("all rounds at once"),
    /** Round by round, each found anew until nothing helps. */
    STEPWISE("round by round"),
    /** All tables of a small class looked through. */
    EXHAUSTIVE("all tables"),
    /** Taken from a plan that was printed. */
    KEPT("as it was printed");

    private final String words;

    Method(String words) {
        this.words = words;
    }

    /** What it is called on a sheet. */
    public String words() {
        return words;
    }

    /** Whether people change over by one simple movement. */
    public boolean isWalked() {
        return this == TWO_LINES || this == RING;
    }
}
