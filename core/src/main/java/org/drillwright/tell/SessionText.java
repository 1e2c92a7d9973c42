package org.drillwright.tell;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.roster.Timing;

/** A session for two, for a terminal. */
public final class SessionText {

    private SessionText() {}

    /** @param drills by id, for their titles */
    public static String of(TwoSession session, Timing timing, Map<String, Drill> drills) {
        Page page = new Page();
        page.line(session.one() + " and " + session.other() + ", as equals. Times from the beginning.");
        page.gap();
        page.line("  " + Page.padded("0:00", 8) + "Opening salute, then warm-up");
        for (TwoSession.Block block : session.blocks()) {
            page.line("  " + Page.padded(Clock.of(block.start()), 8) + title(block.drill(), drills) + ", "
                    + block.length().toMinutes() + " min, " + block.leadsFirst() + " leads first");
            if (!block.worksOn().isEmpty()) {
                page.line("          works on: " + String.join(", ", block.worksOn()));
            }
        }
        page.line("  last    Closing and salute, " + Clock.of(timing.closing()) + "; " + Clock.of(session.spare())
                + " to spare");
        page.list("To know", List.of(session.fact()));
        return page.toString();
    }

    /** A drill's title; its id if there is no such drill. */
    public static String title(String id, Map<String, Drill> drills) {
        return Optional.ofNullable(drills.get(id)).map(Drill::title).orElse(id);
    }
}
