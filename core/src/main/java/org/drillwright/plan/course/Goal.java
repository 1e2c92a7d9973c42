package org.drillwright.plan.course;

import java.util.Locale;
import org.drillwright.wording.Message;

/** What a plan is to keep small, the most important first. */
public enum Goal {
    EXAM,
    FUNDAMENTALS,
    LATE,
    EARLY,
    CHANGED,
    MISSED;

    /** What it is called in a sentence. */
    public Message words() {
        return Message.of(Goal.class, "goal." + name().toLowerCase(Locale.ROOT));
    }
}
