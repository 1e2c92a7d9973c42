package org.drillwright.plan.evening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.roster.Hall;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

/** One card for each place on the floor and one for the caller. */
class CardNeedTest {

    private final Map<String, Drill> drills = Larks.all(
            Larks.drill("salute", "beginner", "solo", "none"), Larks.drill("thrust", "beginner", "partner", "foil"));
    private final School school = Larks.school(new DrillSet("ring", Optional.empty(), List.of("lunge", "thrust")));

    private List<String> sentences(int people) {
        var brief = Larks.in(Hall.of(1800, 1000), Set.of(), "salute", "thrust");
        var plan = ClassPlan.of(
                school, Larks.roster(people, drills), brief, History.NONE, Wished.of(school, brief, drills));
        return CardNeed.of(school, plan, Pairing.of(plan.pairing()).plan()).stream()
                .map(need -> need.sentence().english())
                .toList();
    }

    /** The salute is called once for all and stands in no set; of the thrust, second of its set, three places need one. */
    @Test
    void six_people_have_three_places() {
        assertEquals(List.of("1 card of set beginner", "4 cards of set ring, no. 2"), sentences(6));
    }

    @Test
    void where_nobody_has_a_place_the_caller_still_has_a_card() {
        assertEquals(List.of("1 card of set beginner", "1 card of set ring, no. 2"), sentences(0));
    }

    /** Of two drills each is counted by its own rounds: here the second is worked by nobody. */
    @Test
    void rounds_of_another_drill_do_not_count() {
        var brief = Larks.in(Hall.of(1800, 1000), Set.of(), "thrust");
        var roster = Larks.roster(6, drills);
        var plan = ClassPlan.of(school, roster, brief, History.NONE, Wished.of(school, brief, drills));
        var other = Larks.all(Larks.drill("lunge", "beginner", "partner", "foil"));
        var lunge = Larks.in(Hall.of(1800, 1000), Set.of(), "lunge");
        var pairs = Pairing.of(ClassPlan.of(school, roster, lunge, History.NONE, Wished.of(school, lunge, other))
                        .pairing())
                .plan();
        assertEquals(List.of(new CardNeed("thrust", "ring", 2, 1)), CardNeed.of(school, plan, pairs));
    }
}
