package org.drillwright.print.command.planning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.register.History;
import org.drillwright.wording.Message;

/** What has become of the people and drills of a plan since it was printed. */
public final class SincePrinted {

    private final Tonight tonight;
    private final Kept kept;

    public SincePrinted(Tonight tonight, Kept kept) {
        this.tonight = tonight;
        this.kept = kept;
    }

    /** Refuses names that the roster doesn't have, but for those who left: nobody knows who is meant. */
    public static void mustBeOnTheRoster(Tonight tonight, String mark, Collection<String> names) {
        List<String> strange = names.stream()
                .filter(name -> !name.equals(History.INSTRUCTOR)
                        && !tonight.roster().names().contains(name)
                        && !tonight.classes().members().gone().contains(name))
                .toList();
        if (!strange.isEmpty()) {
            throw new CannotRun(Message.counted(
                    SincePrinted.class, "strange", strange.size(), Message.words(strange), mark, tonight.named()));
        }
    }

    /** What is to be known, one sentence each. */
    public List<Message> changes() {
        List<Message> changes = new ArrayList<>();
        String mark = kept.mark().shown();
        List<String> files = kept.changedSince(tonight.figures());
        if (!files.isEmpty()) {
            List<Message> named = files.stream()
                    .map(file -> Message.of(SincePrinted.class, "file." + file))
                    .toList();
            changes.add(Message.of(SincePrinted.class, "changed.since", mark, Message.listed(named)));
        }
        new TreeMap<>(kept.plan().cards()).forEach((drill, card) -> {
            String now = tonight.card(drill).orElse("");
            if (!now.equals(card)) {
                changes.add(
                        now.isEmpty()
                                ? Message.of(SincePrinted.class, "card.gone", drill, card, mark)
                                : Message.of(SincePrinted.class, "card.changed", drill, card, mark, now));
            }
        });
        kept.plan().rounds().forEach(round -> round.groups().forEach(group -> parted(round, group, changes)));
        return changes;
    }

    private void parted(Round round, Group group, List<Message> changes) {
        List<String> all = group.everyone();
        for (int one = 0; one < all.size(); one++) {
            for (String other : all.subList(one + 1, all.size())) {
                if (tonight.roster().areApart(all.get(one), other)) {
                    changes.add(Message.of(
                            SincePrinted.class,
                            "apart.now",
                            all.get(one),
                            other,
                            kept.mark().shown(),
                            round.number()));
                }
            }
        }
    }
}
