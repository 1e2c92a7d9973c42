package org.drillwright.tell;

import java.time.format.TextStyle;
import java.util.Locale;
import org.drillwright.plan.evening.ClassPlan;

/** What a class is called. */
public final class ClassHead {

    private ClassHead() {}

    /** Such as {@code Monday 2026-09-14, learning: 24 people, 4 drills}. */
    public static String of(ClassPlan plan) {
        return date(plan) + ", " + plan.brief().mode().word() + ": "
                + plan.here().size() + (plan.here().size() == 1 ? " person" : " people") + ", "
                + Page.counted(plan.lesson().drills().size(), "drill");
    }

    public static String date(ClassPlan plan) {
        var date = plan.brief().date();
        return date.getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + date;
    }
}
