package org.drillwright.plan.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

/** A drill is known to whom the roster says so, and to whoever was signed off in it. */
class KnowledgeTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 7);

    private final Knowledge knowledge = Knowledge.of(
            new Roster(
                    List.of(Person.named("Ash").withKnown(Set.of("thrust")), Person.named("Bo")), List.of(), List.of()),
            new History(List.of(
                    Entry.signedOff(DAY, "Ash", "parry"),
                    Entry.workedWith(DAY, "Bo", "lunge", "Ash"),
                    Entry.signedOff(DAY, "Zed", "thrust"))));

    @Test
    void the_rosters_drills_and_those_signed_off_add_up() {
        assertEquals(Set.of("thrust", "parry"), knowledge.of("Ash"));
        assertTrue(knowledge.knows("Ash", "parry"));
    }

    @Test
    void work_on_a_drill_is_not_yet_knowing_it() {
        assertFalse(knowledge.knows("Bo", "lunge"));
    }

    @Test
    void of_someone_who_is_not_in_the_roster_nothing_is_known() {
        assertEquals(Set.of(), knowledge.of("Zed"));
    }
}
