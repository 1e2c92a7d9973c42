package org.drillwright.plan.partner;

import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;

/**
 * What two can work on by themselves: drills for partners that both know and that suit their hands.
 *
 * @param drills the school's, in teaching order
 */
public record SharedDrills(List<Drill> drills, Knowledge knowledge) {

    public SharedDrills {
        drills = List.copyOf(drills);
    }

    /** Those of two people, in teaching order. */
    public List<Drill> of(Person one, Person other) {
        return drills.stream()
                .filter(drill -> drill.form() == Form.PARTNER)
                .filter(drill -> knowledge.knows(one.name(), drill.id()) && knowledge.knows(other.name(), drill.id()))
                .filter(drill -> suitsHands(drill, one, other))
                .toList();
    }

    /** A drill between hands of one side is no drill for others, and the other way round. */
    private static boolean suitsHands(Drill drill, Person one, Person other) {
        if (one.hand().isEmpty() || other.hand().isEmpty()) {
            return true;
        }
        return one.hand().equals(other.hand()) == (drill.hands() == Hands.SAME);
    }
}
