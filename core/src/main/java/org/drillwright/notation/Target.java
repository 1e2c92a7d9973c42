package org.drillwright.notation;

import java.util.Locale;

/** A place that a point or an edge is sent to. */
public enum Target {
    HEAD,
    /** Either cheek: which one is not said. */
    CHEEK,
    INSIDE_CHEEK,
    OUTSIDE_CHEEK,
    CHEST,
    FLANK,
    BELLY,
    SHOULDER,
    BACK,
    BODY,
    HAND,
    WRIST,
    FOREARM,
    ELBOW,
    THIGH,
    KNEE,
    LEG,
    FOOT,
    /** A thing, nobody's body. */
    MARK;

    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Below the hip: off target at foil and sabre (t.77, t.97). */
    public boolean isBelowTheHip() {
        return this == THIGH || this == KNEE || this == LEG || this == FOOT;
    }

    /** Hand to elbow: nearer than the body, and off target at foil (t.77). */
    public boolean isOfTheArm() {
        return this == HAND || this == WRIST || this == FOREARM || this == ELBOW;
    }

    static Target of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
