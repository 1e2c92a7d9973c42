package org.drillwright.tell;

import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.Person;

/** What each person may learn next, and how many know each drill, for a terminal. */
public final class ProgressText {

    private ProgressText() {}

    public static String of(Progress progress) {
        Page page = new Page();
        page.line("Next for each person:");
        for (Person person : progress.people()) {
            List<String> next =
                    progress.next(person.name()).stream().map(Drill::id).toList();
            page.wrapped(
                    "  " + person.name() + ": ", next.isEmpty() ? nothing(progress, person) : String.join(", ", next));
        }
        page.gap()
                .line("Who knows each drill, out of "
                        + Page.counted(progress.people().size(), "person").replace("persons", "people") + ":");
        for (Drill drill : progress.drills()) {
            page.line("  " + Page.padded(drill.id(), 40) + progress.knowing(drill));
        }
        return page.toString();
    }

    private static String nothing(Progress progress, Person person) {
        boolean all = progress.drills().stream()
                .allMatch(drill -> progress.knowledge().knows(person.name(), drill.id()));
        return all ? "knows every drill" : "nothing: they don't yet know what the other drills need";
    }
}
