package org.drillwright.plan.partner;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.model.Hands;

/**
 * Someone who could train with a person.
 *
 * @param gap the difference in skill, if both have a number
 * @param levels how many levels they are apart; 0 if one has none
 * @param hands whether their hands are the same, if both are stated
 * @param days on which both can come
 * @param shared ids of the drills on which the two can work, in teaching order
 */
public record TrainingPartner(
        String name, OptionalInt gap, int levels, Optional<Hands> hands, List<DayOfWeek> days, List<String> shared) {

    public TrainingPartner {
        days = List.copyOf(days);
        shared = List.copyOf(shared);
    }
}
