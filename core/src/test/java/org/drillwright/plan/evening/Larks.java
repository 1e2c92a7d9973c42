package org.drillwright.plan.evening;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.model.Weapon;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.DrillReader;

/** A small invented school and what it asks of an evening. */
final class Larks {

    private Larks() {}

    /** A drill of one count, gone through four times in both roles. */
    static Drill drill(String id, String level, String form, String weapon, String... tags) {
        String text = "title: the " + id + "\nlevel: " + level + "\nform: " + form + "\nweapon: " + weapon + "\ntags: "
                + Arrays.toString(tags) + "\nrepeat: " + (form.equals("solo") ? 7 : 4)
                + "\nswap: true\nsteps: [{leader: Hold., follower: Hold.}]\n";
        return new DrillReader(School.DEFAULT)
                .read(id, id + ".yaml", text.getBytes(StandardCharsets.UTF_8))
                .value()
                .orElseThrow()
                .drill();
    }

    static Map<String, Drill> all(Drill... drills) {
        Map<String, Drill> all = new LinkedHashMap<>();
        Arrays.stream(drills).forEach(drill -> all.put(drill.id(), drill));
        return all;
    }

    static School school(DrillSet... sets) {
        School usual = School.DEFAULT;
        return new School(
                usual.name(),
                usual.levels(),
                List.of(sets),
                usual.gear(),
                usual.words(),
                usual.parries(),
                usual.fundamentals(),
                usual.card(),
                usual.sheet(),
                usual.language(),
                usual.font(),
                usual.classLength(),
                usual.count());
    }

    static ClassBrief wishing(Optional<Weapon> weapon, Optional<String> set, String... drills) {
        return brief(weapon, set, List.of(drills), Set.of(), Optional.empty());
    }

    /** Two rounds on each drill. */
    static ClassBrief in(Hall hall, Set<String> solo, String... drills) {
        return brief(Optional.empty(), Optional.empty(), List.of(drills), solo, Optional.of(hall));
    }

    private static ClassBrief brief(
            Optional<Weapon> weapon, Optional<String> set, List<String> drills, Set<String> solo, Optional<Hall> hall) {
        ClassBrief usual = ClassBrief.on(LocalDate.of(2026, 9, 14));
        return new ClassBrief(
                usual.date(),
                usual.length(),
                weapon,
                usual.mode(),
                drills,
                set,
                usual.settings(),
                OptionalInt.of(2),
                usual.movement(),
                usual.ways(),
                usual.instructor(),
                usual.away(),
                solo,
                usual.timing(),
                hall,
                usual.blocks());
    }

    /** As many as are wanted, called P0, P1 and so on; all know all drills. */
    static Roster roster(int people, Map<String, Drill> drills) {
        return new Roster(
                IntStream.range(0, people)
                        .mapToObj(at -> Person.named("P" + at).withKnown(drills.keySet()))
                        .toList(),
                List.of(),
                List.of());
    }
}
