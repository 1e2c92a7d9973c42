package org.drillwright.plan.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.DrillReader;
import org.drillwright.register.Entry;
import org.drillwright.register.History;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private static Drill drill(String id, String needs) {
        String text = "title: " + id + "\nlevel: intermediate\nform: partner\nweapon: foil\nneeds: " + needs
                + "\nsteps: [{leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    private static final List<Drill> DRILLS =
            List.of(drill("thrust", "[]"), drill("parry", "[thrust]"), drill("compound", "[thrust, parry]"));

    private static Progress progress() {
        Roster roster = new Roster(
                List.of(Person.named("=Ash").withKnown(Set.of("thrust")), Person.named("Bo")), List.of(), List.of());
        History history = new History(List.of(Entry.signedOff(LocalDate.of(2026, 9, 7), "=Ash", "parry")));
        return Progress.of(DRILLS, roster, Knowledge.of(roster, history));
    }

    private static List<String> ids(List<Drill> drills) {
        return drills.stream().map(Drill::id).toList();
    }

    @Test
    void next_is_what_needs_only_what_is_known() {
        assertEquals(List.of("compound"), ids(progress().next("=Ash")));
        assertEquals(List.of("thrust"), ids(progress().next("Bo")));
        assertEquals(List.of("thrust", "parry"), progress().lacking("Bo", DRILLS.get(2)));
        assertEquals(List.of(), progress().lacking("=Ash", DRILLS.get(2)));
    }

    @Test
    void the_table_counts_who_knows_a_drill() {
        assertEquals(List.of(1, 1, 0), DRILLS.stream().map(progress()::knowing).toList());
    }

    @Test
    void a_spreadsheet_runs_no_name() {
        assertEquals("""
                drill,level,'=Ash,Bo
                thrust,intermediate,known,next
                parry,intermediate,known,
                compound,intermediate,next,
                """, progress().csv());
    }
}
