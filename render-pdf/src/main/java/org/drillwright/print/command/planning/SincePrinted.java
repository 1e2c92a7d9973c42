package org.drillwright.print.command.planning;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.record.History;

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
            boolean one = strange.size() == 1;
            throw new CannotRun(String.join(", ", strange) + " of " + mark + (one ? " isn't" : " aren't")
                    + " on the roster now. Write " + (one ? "that name" : "those names")
                    + " there again, or edit a copy of the plan and record that: record " + tonight.named()
                    + " --as FILE.");
        }
    }

    /** What is to be known, one sentence each. */
    public List<String> changes() {
        List<String> changes = new ArrayList<>();
        List<String> files = kept.changedSince(tonight.figures());
        if (!files.isEmpty()) {
            changes.add("Changed since " + kept.mark().shown() + " was printed: "
                    + files.stream().map(file -> "the " + file).collect(Collectors.joining(", ")) + ".");
        }
        new TreeMap<>(kept.plan().cards()).forEach((drill, card) -> {
            String now = tonight.card(drill).orElse("");
            if (!now.equals(card)) {
                changes.add(
                        drill + " had the card " + card + " when " + kept.mark().shown() + " was printed; "
                                + (now.isEmpty() ? "there is no such drill now." : "its card is " + now + " now."));
            }
        });
        kept.plan().rounds().forEach(round -> round.groups().forEach(group -> parted(round, group, changes)));
        return changes;
    }

    private void parted(Round round, Group group, List<String> changes) {
        List<String> all = group.everyone();
        for (int one = 0; one < all.size(); one++) {
            for (String other : all.subList(one + 1, all.size())) {
                if (tonight.roster().areApart(all.get(one), other)) {
                    changes.add("Attention: " + all.get(one) + " and " + other + " are kept apart now, but "
                            + kept.mark().shown() + " puts them together in round " + round.number()
                            + ". Print it again: --from-round " + round.number() + ".");
                }
            }
        }
    }
}
