package org.drillwright.plan.partner;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Timing;
import org.drillwright.read.DrillReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What Ash and Bo can work on alone. By hand: 15 minutes are opening, warm-up and closing, a minute lies between two
 * drills; a drill takes 5 minutes at least, 12 at most, and whole minutes. Both know a, b, c, which are for hands of the
 * same side, and d, for hands of both sides; e is done alone; f only Ash knows.
 */
class TwoSessionTest {

    private static final List<Drill> DRILLS = List.of(
            drill("a", "partner", "same"),
            drill("b", "partner", "same"),
            drill("e", "solo", "same"),
            drill("c", "partner", "same"),
            drill("d", "partner", "opposite"),
            drill("f", "partner", "same"));
    private static final Knowledge KNOWLEDGE = new Knowledge(
            Map.of("Ash", Set.of("a", "b", "c", "d", "e", "f"), "Bo", Set.of("a", "b", "c", "d", "e"), "Cy", Set.of()));
    private static final Person ASH = Person.named("Ash").withHand(Hand.RIGHT);
    private static final Person BO = Person.named("Bo").withHand(Hand.RIGHT);

    private static Drill drill(String id, String form, String hands) {
        String text = "title: " + id + "\nlevel: beginner\nform: " + form + "\nweapon: foil\nhands: " + hands
                + "\nsteps: [{leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    private static TwoSession session(Person one, Person other, int minutes) {
        return TwoSession.of(one, other, Duration.ofMinutes(minutes), DRILLS, KNOWLEDGE, Timing.USUAL);
    }

    private static String text(TwoSession session) {
        return session.blocks().stream()
                .map(block -> block.drill() + " " + block.start().toMinutes() + "+"
                        + block.length().toMinutes() + " " + block.leadsFirst())
                .collect(Collectors.joining(", "));
    }

    /**
     * 32 minutes leave 17: three drills of 5 minutes and two walks. A minute less leaves 16: two drills of 7 and one walk,
     * and 1 to spare; those of the end of the list. 60 leave 45: 43 by three are 14, so 12 each, and 7 to spare.
     */
    @ParameterizedTest(name = "{0} minutes")
    @CsvSource(
            delimiter = '|',
            value = {
                "19 | '' | 4",
                "20 | c 10+5 Ash | 0",
                "25 | c 10+10 Ash | 0",
                "26 | b 10+5 Ash, c 16+5 Bo | 0",
                "31 | b 10+7 Ash, c 18+7 Bo | 1",
                "32 | a 10+5 Ash, b 16+5 Bo, c 22+5 Ash | 0",
                "60 | a 10+12 Ash, b 23+12 Bo, c 36+12 Ash | 7"
            })
    void the_time_is_shared_by_as_many_drills_as_it_holds(int minutes, String blocks, int spare) {
        TwoSession session = session(ASH, BO, minutes);
        assertEquals(blocks, text(session));
        assertEquals(Duration.ofMinutes(spare), session.spare());
    }

    @Test
    void between_hands_of_both_sides_only_the_drill_for_them_is_worked() {
        assertEquals("d 10+12 Ash", text(session(ASH, BO.withHand(Hand.LEFT), 60)));
        assertEquals("d 10+12 Ash", text(session(ASH.withHand(Hand.LEFT), BO, 60)));
        assertEquals(
                "a 10+12 Ash, b 23+12 Bo, c 36+12 Ash",
                text(session(ASH.withHand(Hand.LEFT), BO.withHand(Hand.LEFT), 60)));
    }

    /** 45 minutes less three walks are 42, by four 10. */
    @Test
    void where_a_hand_is_not_stated_no_drill_is_left_out() {
        String all = "a 10+10 Ash, b 21+10 Bo, c 32+10 Ash, d 43+10 Bo";
        assertEquals(all, text(session(ASH, Person.named("Bo"), 60)));
        assertEquals(all, text(session(Person.named("Ash"), BO, 60)));
    }

    @Test
    void the_two_are_told_what_was_chosen() {
        assertEquals(
                "2 of the 3 drills that both know, the latest in teaching order.",
                session(ASH, BO, 31).fact().english());
        assertEquals("All 3 drills that both know.", session(ASH, BO, 60).fact().english());
        assertEquals(
                "The only drill that both know.",
                session(ASH, BO.withHand(Hand.LEFT), 60).fact().english());
        assertEquals(
                "There isn't time for a drill besides the opening, warm-up and closing.",
                session(ASH, BO, 19).fact().english());
        assertEquals(
                "There is no drill yet that both know and that suits their hands.",
                session(ASH, Person.named("Cy"), 60).fact().english());
    }
}
