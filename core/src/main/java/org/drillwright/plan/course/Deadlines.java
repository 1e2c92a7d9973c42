package org.drillwright.plan.course;

import java.util.Arrays;

/**
 * By which class each drill has to be new, so that the exam's workings fit behind it: numbers of the classes to come, below
 * 0 where that class is over already.
 */
final class Deadlines {

    static final int NEVER = Integer.MAX_VALUE;

    private final int[] by;

    private Deadlines(int[] by) {
        this.by = by;
    }

    /** Backwards: a drill of the exam by the third last class before it, if three workings are asked; what it needs a class before. */
    static Deadlines of(Course course) {
        int drills = course.drills().size();
        int[] by = new int[drills];
        Arrays.fill(by, NEVER);
        for (int drill = 0; drill < drills; drill++) {
            Asked asked = course.drill(drill);
            if (asked.workings() > 0 && !asked.isIntroduced()) {
                by[drill] = course.beforeExam() - asked.workings();
            }
        }
        for (int pass = 0; pass < drills; pass++) {
            for (int drill = 0; drill < drills; drill++) {
                for (int need : course.drill(drill).needs()) {
                    if (by[drill] != NEVER && !course.drill(need).isIntroduced()) {
                        by[need] = Math.min(by[need], by[drill] - 1);
                    }
                }
            }
        }
        return new Deadlines(by);
    }

    /** {@link #NEVER} if the exam doesn't ask for it. */
    int of(int drill) {
        return by[drill];
    }
}
