package org.drillwright.notation;

/**
 * A distance cue: one measure, or one that changes within the count.
 *
 * @param from where the count begins
 * @param to where it ends; the same if the cue names one measure
 */
public record MeasureCue(Measure from, Measure to) {

    /** Whether the cue names one measure only. */
    public boolean isOne() {
        return from == to;
    }

    @Override
    public String toString() {
        return isOne() ? from.word() : from.word() + " to " + to.word();
    }
}
