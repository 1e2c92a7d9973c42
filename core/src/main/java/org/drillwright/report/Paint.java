package org.drillwright.report;

import org.drillwright.source.Severity;

/** How a report stresses words; a terminal may colour them, a file leaves them alone. */
public interface Paint {

    /** Leaves everything as it is. */
    Paint NONE = new Paint() {};

    /** A word that tells how much a finding weighs. */
    default String severity(Severity severity, String word) {
        return word;
    }

    /** A place in a file. */
    default String place(String text) {
        return text;
    }

    /** The mark under the words that are meant. */
    default String caret(Severity severity, String text) {
        return text;
    }

    /** What matters less. */
    default String quiet(String text) {
        return text;
    }
}
