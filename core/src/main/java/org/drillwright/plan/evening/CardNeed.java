package org.drillwright.plan.evening;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Form;
import org.drillwright.model.School;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.wording.Message;

/**
 * Which cards to bring.
 *
 * @param set in which the drill's card is found; the level's name if no set has it
 * @param number of the drill in the set, from 1; 0 if it has none
 * @param count one for each place on the floor and one for the caller
 */
public record CardNeed(String drill, String set, int number, int count) {

    /** For each drill of a lesson, in its order. */
    public static List<CardNeed> of(School school, ClassPlan plan, PairingPlan pairs) {
        List<CardNeed> needs = new ArrayList<>();
        for (Drill drill : plan.inOrder()) {
            int count = 1 + (drill.form() == Form.PARTNER ? places(drill.id(), pairs) : 0);
            needs.add(school.sets().stream()
                    .filter(set -> set.drills().contains(drill.id()))
                    .findFirst()
                    .map(set -> new CardNeed(drill.id(), set.name(), number(set, drill), count))
                    .orElse(new CardNeed(drill.id(), drill.level(), 0, count)));
        }
        return needs;
    }

    private static int number(DrillSet set, Drill drill) {
        return set.drills().indexOf(drill.id()) + 1;
    }

    private static int places(String drill, PairingPlan pairs) {
        return pairs.rounds().stream()
                .filter(round -> round.drill().equals(drill))
                .flatMap(round -> round.groups().stream())
                .mapToInt(group -> group.place())
                .max()
                .orElse(0);
    }

    /** As it is said on a sheet. */
    public Message sentence() {
        return number > 0
                ? Message.counted(CardNeed.class, "number", count, set, number)
                : Message.counted(CardNeed.class, "cards", count, set);
    }
}
