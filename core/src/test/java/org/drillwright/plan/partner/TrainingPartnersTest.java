package org.drillwright.plan.partner;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Timing;
import org.drillwright.read.DrillReader;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

/** All people are invented. */
class TrainingPartnersTest {

    private static final Person ASH = person("Ash", 10, Hand.RIGHT, Set.of("a", "b", "c"), DayOfWeek.MONDAY);
    private static final Person BO = person("Bo", 17, Hand.LEFT, Set.of("a"), DayOfWeek.MONDAY);
    private static final Person CY = person("Cy", 11, Hand.RIGHT, Set.of("a", "b", "c"), DayOfWeek.MONDAY);
    private static final Person DEE = person("Dee", 10, Hand.RIGHT, Set.of("a"), DayOfWeek.FRIDAY);
    private static final Person ELI = person("Eli", 10, Hand.RIGHT, Set.of("a"), DayOfWeek.MONDAY);
    private static final Roster ROSTER =
            new Roster(List.of(ASH, BO, CY, DEE, ELI), List.of(), List.of(new Apart("Eli", "Ash")));
    private static final Knowledge KNOWLEDGE = Knowledge.of(ROSTER, History.NONE);

    private static Person person(String name, int skill, Hand hand, Set<String> knows, DayOfWeek day) {
        return new Person(
                name, Optional.empty(), Optional.of(hand), OptionalInt.of(skill), knows, List.of(day), false, false);
    }

    static Drill drill(String id, String hands) {
        String text = "title: " + id + "\nlevel: intermediate\nform: partner\nweapon: foil\nhands: " + hands
                + "\nworks-on: [line]\nsteps: [{leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    private static final List<Drill> DRILLS = List.of(drill("a", "same"), drill("b", "same"), drill("c", "opposite"));

    /**
     * Nobody from whom one is kept apart, and nobody who never comes on the same day. Drills a and b are for hands of one
     * side, c for hands of both; Bo's is the left.
     */
    @Test
    void the_nearest_in_skill_come_first() {
        assertEquals(
                List.of(
                        new TrainingPartner(
                                "Cy",
                                OptionalInt.of(1),
                                0,
                                Optional.of(Hands.SAME),
                                List.of(DayOfWeek.MONDAY),
                                List.of("a", "b")),
                        new TrainingPartner(
                                "Bo",
                                OptionalInt.of(7),
                                0,
                                Optional.of(Hands.OPPOSITE),
                                List.of(DayOfWeek.MONDAY),
                                List.of())),
                new TrainingPartners(ROSTER, List.of(), new SharedDrills(DRILLS, KNOWLEDGE)).of(ASH));
    }

    @Test
    void who_is_away_or_does_solo_work_is_not_proposed() {
        Roster roster = new Roster(
                List.of(ASH, absent("Fay", /* away= */ true), absent("Gus", /* away= */ false), CY),
                List.of(),
                List.of());
        assertEquals(
                List.of("Cy"),
                new TrainingPartners(roster, List.of(), new SharedDrills(DRILLS, KNOWLEDGE))
                        .of(ASH).stream().map(TrainingPartner::name).toList());
    }

    private static Person absent(String name, boolean away) {
        return new Person(
                name,
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                Set.of("a"),
                List.of(DayOfWeek.MONDAY),
                away,
                !away);
    }

    /** Of 60 minutes 15 are opening, warm-up and closing; two drills and a changeover share 45. */
    @Test
    void two_work_only_on_what_both_know_and_take_turns_to_lead() {
        TwoSession session = TwoSession.of(ASH, CY, Duration.ofMinutes(60), DRILLS, KNOWLEDGE, Timing.USUAL);
        assertEquals(
                List.of(
                        new TwoSession.Block(
                                "a", Duration.ofMinutes(10), Duration.ofMinutes(12), "Ash", List.of("line")),
                        new TwoSession.Block(
                                "b", Duration.ofMinutes(23), Duration.ofMinutes(12), "Cy", List.of("line"))),
                session.blocks());
        assertEquals(Duration.ofMinutes(20), session.spare());
    }

    @Test
    void without_a_common_drill_there_is_no_session() {
        TwoSession session = TwoSession.of(ASH, BO, Duration.ofMinutes(60), DRILLS, KNOWLEDGE, Timing.USUAL);
        assertTrue(session.blocks().isEmpty());
        assertEquals(
                "There is no drill yet that both know and that suits their hands.",
                session.fact().english());
    }

    @Test
    void in_too_short_a_time_nothing_is_begun() {
        TwoSession session = TwoSession.of(ASH, CY, Duration.ofMinutes(18), DRILLS, KNOWLEDGE, Timing.USUAL);
        assertTrue(session.blocks().isEmpty());
        assertEquals(Duration.ofMinutes(3), session.spare());
    }
}
