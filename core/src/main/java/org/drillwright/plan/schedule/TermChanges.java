package org.drillwright.plan.schedule;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.wording.Message;

/** What a plan says of the classes to come that was published otherwise. */
final class TermChanges {

    private TermChanges() {}

    /** One sentence for each class that is changed. */
    static List<Message> of(TermGroup group, List<ClassRow> rows, PublishedTerm published) {
        List<Message> sentences = new ArrayList<>();
        for (ClassRow row : rows) {
            if (!row.over()) {
                GroupCells before = published
                        .of(row.day().key())
                        .flatMap(one -> one.of(group.name()))
                        .orElse(new GroupCells(group.name(), List.of(), List.of()));
                List<Message> parts = new ArrayList<>();
                differing(ids(row.asNew()), before.asNew(), "new", parts);
                differing(ids(row.again()), before.again(), "again", parts);
                if (!parts.isEmpty()) {
                    sentences.add(Message.of(
                            TermChanges.class, "changed", Message.day(row.day().date()), Message.clauses(parts)));
                }
            }
        }
        return sentences;
    }

    private static List<String> ids(List<Taught> taught) {
        return taught.stream().map(Taught::drill).toList();
    }

    private static void differing(List<String> now, List<String> before, String how, List<Message> parts) {
        List<String> added =
                now.stream().filter(drill -> !before.contains(drill)).toList();
        List<String> gone =
                before.stream().filter(drill -> !now.contains(drill)).toList();
        if (!added.isEmpty()) {
            parts.add(Message.of(TermChanges.class, how + ".added", Message.words(added)));
        }
        if (!gone.isEmpty()) {
            parts.add(Message.of(TermChanges.class, how + ".gone", Message.words(gone)));
        }
    }
}
