package org.drillwright.plan.rounds;

import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/** How a table was made. */
public enum Method {
    /** One line stays, the other moves one post a round. */
    TWO_LINES,
    /** Those who know the drill move round a ring, one place a round. */
    RING,
    /** All rounds at once. */
    FACTOR,
    /** Round by round, each found anew until nothing helps. */
    STEPWISE,
    /** All tables of a small class looked through. */
    EXHAUSTIVE,
    /** Taken from a plan that was printed. */
    KEPT;

    /** What it is called on a sheet. */
    public Message words() {
        return Message.of(Method.class, "method." + ConstantName.hyphened(this));
    }

    /** Whether people change over by one simple movement. */
    public boolean isWalked() {
        return this == TWO_LINES || this == RING;
    }
}
