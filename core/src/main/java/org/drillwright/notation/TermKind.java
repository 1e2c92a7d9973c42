package org.drillwright.notation;

import java.util.Locale;

/** The kinds of term, in the order in which they win where one form is of two kinds. */
public enum TermKind {
    FOOTWORK,
    ARM,
    BLADE,
    ANSWER,
    COURTESY,
    POSITION,
    LINE,
    TARGET,
    KIND,
    CONTACT,
    MEASURE,
    SIDE,
    DET,
    LINK,
    LIGHT,
    MANNER,
    /** Measures in the short form that only a distance cue takes. */
    CUE,
    /** Words that leave something open. */
    CHOICE;

    /** The heading that the vocabulary's files use. */
    String heading() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Whether a term of this kind is something that a person does. */
    public boolean isAction() {
        return compareTo(COURTESY) <= 0;
    }

    /** Whether a term of this kind means something in fencing; the others are small words. */
    public boolean isOfTheTrade() {
        return compareTo(MEASURE) <= 0;
    }
}
