package org.drillwright.plan.course;

/** What a plan is to keep small, the most important first. */
public enum Goal {
    EXAM("workings missing before the exam"),
    FUNDAMENTALS("weeks over the limit for fundamentals"),
    LATE("weeks by which reviews are late"),
    EARLY("how early drills are new (value times class)"),
    CHANGED("changes to the published plan"),
    MISSED("introductions somebody is expected to miss");

    private final String words;

    Goal(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
