package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.read.DrillReader;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

class ClassLoadsTest {

    private static Drill drill(String id, String needs) {
        String text = "title: " + id + "\nlevel: intermediate\nform: partner\nweapon: foil\nneeds: " + needs
                + "\nrepeat: 6\nswap: true\nsteps: [{leader: Hold., follower: Hold.}, {leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    private static final List<Person> HERE = List.of(Person.named("Ash"), Person.named("Bo"));
    private static final Knowledge KNOWLEDGE =
            new Knowledge(Map.of("Ash", Set.of("thrust", "lunge"), "Bo", Set.of("thrust")));

    private static ClassLoads loads(Drill... drills) {
        ClassBrief brief = ClassBrief.on(LocalDate.of(2026, 9, 14));
        return ClassLoads.of(School.DEFAULT, brief, List.of(drills), HERE, KNOWLEDGE, 2);
    }

    /** Two counts of two seconds and three to come back, six times for each of two roles, with each of two partners. */
    @Test
    void a_drill_takes_its_time_from_its_own_file() {
        DrillLoad load = loads(drill("thrust", "[]")).loads().get(0);
        assertEquals(Duration.ofSeconds(2 * 2 * 6 * (2 * 2 + 3)), load.practice());
        assertEquals(Duration.ofSeconds(60 + 168 + 2 * 10 + 30), load.total());
    }

    @Test
    void a_drill_that_somebody_is_new_to_takes_longer_to_show() {
        assertEquals(
                Duration.ofSeconds(150),
                loads(drill("lunge", "[]")).loads().get(0).explain());
    }

    @Test
    void needs_that_everyone_knows_are_met() {
        ClassLoads loads = loads(drill("parry", "[thrust, lunge]"), drill("lunge", "[]"));
        assertEquals(List.of("lunge"), loads.loads().get(0).needs());
        assertEquals(List.of(), loads.unmet());
    }

    @Test
    void needs_that_nobody_meets_are_told_without_all_the_names() {
        assertEquals(
                List.of("parry needs salute, which nobody here can do yet."),
                loads(drill("parry", "[salute]")).unmet().stream()
                        .map(remark -> remark.sentence().english())
                        .toList());
    }

    @Test
    void needs_that_somebody_lacks_are_told_with_the_name() {
        assertEquals(
                List.of("parry needs lunge, which Bo can't do yet."),
                Remark.sentences(loads(drill("parry", "[thrust, lunge]")).unmet()).stream()
                        .map(Message::english)
                        .toList());
    }
}
