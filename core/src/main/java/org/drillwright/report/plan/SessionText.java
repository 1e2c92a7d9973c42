package org.drillwright.report.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Drill;
import org.drillwright.plan.partner.TwoSession;
import org.drillwright.plan.roster.Timing;
import org.drillwright.wording.Message;

/** A session for two, for a terminal. */
public final class SessionText {

    private static final int TIME = 8;

    private SessionText() {}

    /** @param drills by id, for their titles */
    public static String of(TwoSession session, Timing timing, Map<String, Drill> drills, Locale language) {
        TerminalPage page = new TerminalPage(language);
        page.line(said("as.equals", session.one(), session.other()));
        page.gap();
        page.line("  " + TerminalPage.padded("0:00", TIME) + page.said(said("then.warm.up")));
        for (TwoSession.Block block : session.blocks()) {
            Message drill = said(
                    "session.drill",
                    title(block.drill(), drills),
                    block.length().toMinutes(),
                    block.leadsFirst());
            page.line("  " + TerminalPage.padded(Clock.of(block.start()), TIME) + page.said(drill));
            if (!block.worksOn().isEmpty()) {
                page.line("          " + page.said(said("works.on", Message.words(block.worksOn()))));
            }
        }
        Message closing = said("session.closing", Clock.of(timing.closing()), Clock.of(session.spare()));
        page.line("  " + TerminalPage.padded(page.said(said("last")), TIME) + page.said(closing));
        page.list(said("to.know"), List.of(session.fact()));
        return page.toString();
    }

    private static Message said(String key, Object... values) {
        return Message.of(SessionText.class, key, values);
    }

    /** A drill's title; its id if there is no such drill. */
    public static String title(String id, Map<String, Drill> drills) {
        return Optional.ofNullable(drills.get(id)).map(Drill::title).orElse(id);
    }
}
