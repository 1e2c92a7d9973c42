package org.drillwright.check;

import org.drillwright.source.Findings;

/** One thing that is asked of a drill. */
public interface Rule {

    /** What people are told of the rule. */
    RuleText text();

    /** Looks at a drill and adds what it finds; never throws for a drill that is wrong. */
    void judge(Subject subject, Findings findings);
}
