package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.DrillReader;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

/**
 * Who is paired, who works alone and who may help, as the roster and the class file have it. Ash and Bo, the roster's
 * first two, are here; Cy does only solo work; Dee is away today, Eli for longer; Wren and Lark assist, Lark is away.
 */
class PairingRequestTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);
    private static final History HISTORY = new History(
            List.of(Entry.signedOff(DAY.minusDays(7), "Bo", "thrust"), Entry.signedOff(DAY, "Ash", "thrust")));

    private final Roster roster = new Roster(
            List.of(
                    Person.named("Ash"),
                    Person.named("Bo"),
                    person("Cy", false, true),
                    Person.named("Dee"),
                    person("Eli", true, false),
                    Person.named("Fay")),
            List.of("Wren", "Lark"),
            List.of(new Apart("Ash", "Bo")));

    private static Person person(String name, boolean away, boolean solo) {
        Person one = Person.named(name);
        return new Person(name, one.level(), one.hand(), one.skill(), one.knows(), one.days(), away, solo);
    }

    private static ClassBrief brief(boolean instructor) {
        ClassBrief usual = ClassBrief.on(DAY);
        return new ClassBrief(
                usual.date(),
                usual.length(),
                usual.weapon(),
                usual.mode(),
                usual.drills(),
                usual.set(),
                usual.settings(),
                usual.rounds(),
                usual.movement(),
                usual.ways(),
                instructor,
                Set.of("Dee", "Lark"),
                Set.of("Fay"),
                usual.timing(),
                usual.hall(),
                usual.blocks());
    }

    private static Drill drill(String id, String hands) {
        String text = "title: " + id + "\nlevel: beginner\nform: partner\nweapon: foil\nhands: " + hands
                + "\nsteps: [{leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    private PairingRequest request(boolean instructor) {
        Drill thrust = drill("thrust", "same");
        return PairingRequest.of(
                School.DEFAULT,
                roster,
                brief(instructor),
                HISTORY,
                List.of(thrust, thrust, drill("parry", "opposite")));
    }

    private static List<String> students(PairingRequest request) {
        return request.students().stream().map(Person::name).toList();
    }

    @Test
    void those_here_are_paired_unless_the_roster_or_the_class_gives_them_solo_work() {
        assertEquals(List.of("Ash", "Bo"), students(request(true)));
        assertEquals(List.of("Cy", "Fay"), request(true).soloists());
    }

    @Test
    void the_instructor_helps_before_the_assistants_who_are_here() {
        assertEquals(List.of("instructor", "Wren"), request(true).helpers());
        assertEquals(List.of("Wren"), request(false).helpers());
    }

    @Test
    void levels_and_hands_are_those_of_the_school_and_its_drills() {
        assertEquals(
                List.of("beginner", "intermediate", "training"), request(true).levels());
        assertEquals(
                Map.of("thrust", Hands.SAME, "parry", Hands.OPPOSITE),
                request(true).hands());
        assertEquals(List.of("thrust", "thrust", "parry"), request(true).drills());
    }

    /** Bo was signed off a week ago; Ash only on the day itself, so not before the class. */
    @Test
    void new_to_a_drill_is_whoever_was_not_signed_off_before_the_class() {
        assertTrue(request(true).isNew("Ash", "thrust"));
        assertFalse(request(true).isNew("Bo", "thrust"));
        assertEquals(1, request(true).history().entries().size());
    }

    @Test
    void whoever_leaves_is_paired_no_more() {
        PairingRequest after = request(true).after(List.of(), roster, List.of("Ash", "Cy", "Wren"), List.of());
        assertEquals(List.of("Bo"), students(after));
        assertEquals(List.of("Fay"), after.soloists());
        assertEquals(List.of("instructor"), after.helpers());
    }

    @Test
    void whoever_comes_late_takes_the_rosters_place() {
        PairingRequest after = request(true).after(List.of(), roster, List.of("Bo"), List.of("Dee", "Eli"));
        assertEquals(List.of("Ash", "Dee", "Eli"), students(after));
    }

    @Test
    void whoever_worked_alone_and_is_to_be_paired_is_no_soloist_any_more() {
        PairingRequest after = request(true).after(List.of(), roster, List.of(), List.of("Cy"));
        assertEquals(List.of("Ash", "Bo", "Cy"), students(after));
        assertEquals(List.of("Fay"), after.soloists());
    }

    @Test
    void rounds_that_were_played_are_planned_no_more() {
        Round played = new Round(1, "thrust", List.of());
        PairingRequest after = request(true).after(List.of(played), roster, List.of(), List.of());
        assertEquals(List.of(played), after.played());
        assertEquals(List.of("thrust", "parry"), after.open());
        PairingRequest over =
                request(true).after(List.of(played, played, played, played), roster, List.of(), List.of());
        assertEquals(List.of(), over.open());
    }
}
