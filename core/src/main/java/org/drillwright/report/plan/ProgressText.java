package org.drillwright.report.plan;

import java.util.List;
import java.util.Locale;
import org.drillwright.model.Drill;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.Person;
import org.drillwright.wording.Message;

/** What each person may learn next, and how many know each drill, for a terminal. */
public final class ProgressText {

    private ProgressText() {}

    public static String of(Progress progress, Locale language) {
        TerminalPage page = new TerminalPage(language);
        page.line(said("next"));
        for (Person person : progress.people()) {
            List<String> next =
                    progress.next(person.name()).stream().map(Drill::id).toList();
            page.wrapped("  " + person.name() + ": ", next.isEmpty() ? nothing(progress, person) : Message.words(next));
        }
        page.gap()
                .line(Message.counted(
                        ProgressText.class, "knows", progress.people().size()));
        for (Drill drill : progress.drills()) {
            page.line("  " + TerminalPage.padded(drill.id(), 40) + progress.knowing(drill));
        }
        return page.toString();
    }

    private static Message nothing(Progress progress, Person person) {
        boolean all = progress.drills().stream()
                .allMatch(drill -> progress.knowledge().knows(person.name(), drill.id()));
        return said(all ? "knows.all" : "knows.too.little");
    }

    private static Message said(String key) {
        return Message.of(ProgressText.class, key);
    }
}
