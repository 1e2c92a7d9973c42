package org.drillwright.plan.schedule;

import org.drillwright.plan.course.Reason;

/** A drill in a class, and why it is there. */
public record Taught(String drill, int minutes, Reason reason) {}
