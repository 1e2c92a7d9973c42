package org.drillwright.print.sheet.wall;

/** The widths of rules, in points. */
final class Rule {

    static final double THIN = 0.5;
    static final double HEAVY = 1.5;

    private Rule() {}
}
