package org.drillwright.report.plan;

import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.wording.Message;

/** What a class is called. */
final class ClassHead {

    private ClassHead() {}

    /** Such as {@code Monday 2026-09-14, learning: 24 people, 4 drills}. */
    public static Message of(ClassPlan plan) {
        return Message.of(
                ClassHead.class,
                "class",
                Message.weekday(plan.brief().date()),
                Message.of(ClassHead.class, "mode." + plan.brief().mode().word()),
                Message.counted(ClassHead.class, "people", plan.here().size()),
                Message.counted(
                        ClassHead.class, "drills", plan.lesson().drills().size()));
    }
}
