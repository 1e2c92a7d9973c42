package org.drillwright.plan.roster;

/** Two who are kept apart, whatever it costs. */
public record Apart(String one, String other) {

    /** Whether it is these two, in either order. */
    public boolean parts(String a, String b) {
        return (one.equals(a) && other.equals(b)) || (one.equals(b) && other.equals(a));
    }
}
