package org.drillwright.reading;

import java.util.Locale;
import org.drillwright.wording.Message;

/** The kinds of term that people look up, in the order in which they are listed. */
public enum TermKind {
    FOOTWORK,
    ARM,
    BLADE,
    ANSWER,
    COURTESY,
    POSITION,
    TARGET,
    MEASURE;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Message words() {
        return Message.of(TermKind.class, "kind." + word());
    }

    /** Whether a term of this kind is something that a person does. */
    public boolean isAction() {
        return compareTo(COURTESY) <= 0;
    }
}
