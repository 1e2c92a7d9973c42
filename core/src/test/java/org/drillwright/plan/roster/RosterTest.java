package org.drillwright.plan.roster;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** All people are invented. */
class RosterTest {

    private static final Roster ROSTER = new Roster(
            List.of(Person.named("Ash"), Person.named("Bo").withSkill(7)),
            List.of("Wren"),
            List.of(new Apart("Ash", "Bo")));

    @Test
    void a_person_is_found_by_the_exact_name() {
        assertEquals(Optional.of(Person.named("Bo").withSkill(7)), ROSTER.person("Bo"));
        assertEquals(Optional.empty(), ROSTER.person("bo"));
    }

    @Test
    void an_assistant_is_named_but_is_no_student() {
        assertEquals(List.of("Ash", "Bo", "Wren"), ROSTER.names());
        assertEquals(Optional.empty(), ROSTER.person("Wren"));
    }

    @Test
    void those_kept_apart_are_so_in_either_order() {
        assertTrue(ROSTER.areApart("Ash", "Bo") && ROSTER.areApart("Bo", "Ash"));
        assertFalse(ROSTER.areApart("Ash", "Wren") || ROSTER.areApart("Wren", "Bo"));
    }

    @Test
    void a_change_reaches_every_student_and_nothing_else() {
        Roster changed = ROSTER.withEach(person -> person.withSkill(9));
        assertEquals(
                List.of(Person.named("Ash").withSkill(9), Person.named("Bo").withSkill(9)), changed.people());
        assertEquals(ROSTER.assistants(), changed.assistants());
        assertEquals(ROSTER.apart(), changed.apart());
    }
}
