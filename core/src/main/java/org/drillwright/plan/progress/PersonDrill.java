package org.drillwright.plan.progress;

/** Somebody and a drill. */
public record PersonDrill(String person, String drill) {}
