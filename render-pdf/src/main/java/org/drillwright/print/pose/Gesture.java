package org.drillwright.print.pose;

/** What somebody does with the hand in a count besides strokes and positions. */
public enum Gesture {
    SALUTE,
    /** The partner's blade is beaten aside. */
    BEAT,
    /** A high line is opened on purpose: the blade goes down. */
    GIVES_HIGH,
    /** A low line is opened on purpose: the blade goes up. */
    GIVES_LOW
}
