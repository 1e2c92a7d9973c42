package org.drillwright.plan.evening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Roster;
import org.drillwright.report.plan.Clock;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The example class: 24 people, 4 drills, 75 minutes. */
class ClassPlanTest {

    private static SchoolFolder folder = null;
    private static ClassFolder classes = null;
    private static ClassPlan plan = null;
    private static PairingPlan pairs = null;

    @BeforeAll
    static void planIt() throws IOException {
        folder = SchoolFolder.open(Path.of("..", "drills"));
        classes = ClassFolder.open(folder);
        ClassBrief brief =
                classes.read(classes.named("tonight").orElseThrow()).value().orElseThrow();
        plan = ClassPlan.of(
                folder.school(),
                classes.roster().orElseThrow(),
                brief,
                classes.history(),
                Wished.of(folder.school(), brief, classes.drills()));
        pairs = Pairing.of(plan.pairing()).plan();
    }

    @Test
    void nothing_is_wrong_with_the_example() throws IOException {
        assertEquals(List.of(), classes.findings());
        assertEquals(List.of(), classes.classFindings());
        assertEquals(List.of(), plan.remarks());
        assertEquals(24, plan.here().size());
    }

    /**
     * By hand: keeping distance, 5 counts of 2 s and 3 s back, 3 times in 2 roles, is 78 s, with one change of roles 88 s,
     * with 150 s of showing 238 s. Straight thrust, 3 counts: 9 s, 8 times, 2 roles, 144 s and 10 s a round.
     */
    @Test
    void the_lesson_is_that_worked_by_hand() {
        var lesson = plan.lesson();
        assertEquals("10:00", Clock.of(lesson.blocks().get(2).start()));
        assertEquals(238, lesson.blocks().get(2).length().toSeconds());
        assertEquals("14:58", Clock.of(lesson.blocks().get(3).start()));
        var thrust = lesson.drills().get(1);
        assertEquals(
                150 + thrust.rounds() * (2 * 8 * (thrust.counts() * 2 + 3) + 10) + (thrust.rounds() - 1) * 60L,
                lesson.blocks().get(3).length().toSeconds());
        assertTrue(lesson.fits());
        assertEquals(1, lesson.drills().get(0).rounds());
        assertEquals(List.of(), lesson.advice());
    }

    @Test
    void everyone_has_a_permitted_partner_in_each_round() {
        Roster roster = classes.roster().orElseThrow();
        Knowledge knowledge =
                Knowledge.of(roster, classes.history().before(plan.brief().date()));
        Set<Set<String>> met = new HashSet<>();
        for (Round round : pairs.rounds()) {
            Set<String> seen = new HashSet<>();
            for (Group group : round.groups()) {
                String one = group.people().get(0);
                String other = group.everyone().get(1);
                assertEquals(2, group.everyone().size());
                assertTrue(group.people().stream().allMatch(seen::add));
                assertTrue(group.helper().isPresent() || met.add(Set.of(one, other)), "again: " + one + ", " + other);
                assertTrue(group.helper().isPresent()
                        || knowledge.knows(one, round.drill())
                        || knowledge.knows(other, round.drill()));
                assertTrue(!roster.areApart(one, other));
            }
            assertEquals(24, seen.size());
        }
        assertEquals(List.of(), pairs.shortages());
    }

    @Test
    void a_card_for_each_place_and_one_for_the_caller() {
        List<CardNeed> needs = CardNeed.of(folder.school(), plan, pairs);
        assertEquals(
                "13 cards of set intermediate, no. 1", needs.get(0).sentence().english());
        assertEquals(4, needs.size());
    }
}
