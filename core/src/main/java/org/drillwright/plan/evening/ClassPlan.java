package org.drillwright.plan.evening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.School;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.lesson.ClassLoads;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.lesson.Lesson;
import org.drillwright.plan.lesson.LessonPlan;
import org.drillwright.plan.lesson.OwnBlocks;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.plan.pair.PairingRequest;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.register.History;

/**
 * One class: the lesson that fits, and what is asked of its pairs.
 *
 * @param here everyone who is here, those who do solo work too
 * @param drills of the lesson, by id
 * @param lanes of the hall, if one is named
 * @param waves how often a round of partners is worked because the lanes don't hold all at once, 1 or more
 * @param pairing for {@link org.drillwright.plan.pair.Pairing}; only drills for partners have rounds
 * @param remarks what the instructor should know before the lesson
 */
public record ClassPlan(
        ClassBrief brief,
        List<Person> here,
        Map<String, Drill> drills,
        LessonPlan lesson,
        Optional<LaneLayout> lanes,
        int waves,
        PairingRequest pairing,
        List<Remark> remarks) {

    public ClassPlan {
        here = List.copyOf(here);
        drills = Map.copyOf(drills);
        remarks = List.copyOf(remarks);
    }

    /**
     * Plans a class.
     *
     * @param wished what {@link Wished#of} found
     * @param history all that is on record; what is not before the day of the class isn't looked at
     */
    public static ClassPlan of(School school, Roster roster, ClassBrief brief, History history, Wished wished) {
        List<Person> here = brief.here(roster);
        Knowledge knowledge = Knowledge.of(roster, history.before(brief.date()));
        PairingRequest none = PairingRequest.of(school, roster, brief, history, List.of());
        Optional<LaneLayout> lanes = brief.hall().map(LaneLayout::of);
        int waves = Math.max(
                1,
                lanes.map(layout -> layout.waves((none.students().size() + 1) / 2))
                        .orElse(1));
        ClassLoads loads = ClassLoads.of(school, brief, wished.drills(), here, knowledge, 1);
        LessonPlan lesson = new Lesson(
                        brief.length().orElse(school.classLength()),
                        brief.timing(),
                        OwnBlocks.on(brief.date(), brief.blocks(), history))
                .planWithRounds(
                        inWaves(loads, wished.drills(), waves), new MostRounds(brief, wished.drills(), none)::of);
        Map<String, Drill> drills = lesson.drills().stream()
                .flatMap(load ->
                        wished.drills().stream().filter(drill -> drill.id().equals(load.drill())))
                .collect(Collectors.toMap(Drill::id, drill -> drill));
        List<Drill> rounds = lesson.drillOfEachRound().stream()
                .flatMap(id -> Optional.ofNullable(drills.get(id)).stream())
                .filter(drill -> drill.form() == Form.PARTNER)
                .toList();
        PairingRequest pairing = PairingRequest.of(school, roster, brief, history, rounds);
        return new ClassPlan(
                brief, here, drills, lesson, lanes, waves, pairing, remarks(wished, loads, waves, brief, lanes));
    }

    private static List<DrillLoad> inWaves(ClassLoads loads, List<Drill> drills, int waves) {
        return loads.loads().stream()
                .map(load -> drills.stream()
                                .anyMatch(drill -> drill.id().equals(load.drill()) && drill.form() == Form.PARTNER)
                        ? load.withWaves(waves)
                        : load)
                .toList();
    }

    private static List<Remark> remarks(
            Wished wished, ClassLoads loads, int waves, ClassBrief brief, Optional<LaneLayout> lanes) {
        List<Remark> remarks = new ArrayList<>(loads.unmet());
        for (String id : wished.otherWeapon()) {
            remarks.add(new Remark.OtherWeapon(id, brief.weapon().orElseThrow()));
        }
        lanes.filter(layout -> layout.count() == 0).ifPresent(layout -> remarks.add(new Remark.NoLane(layout)));
        lanes.filter(layout -> waves > 1).ifPresent(layout -> remarks.add(new Remark.Waves(layout.count(), waves)));
        return remarks;
    }

    /** The same with another way to change over. */
    public ClassPlan moving(Movement movement) {
        return new ClassPlan(brief, here, drills, lesson, lanes, waves, pairing.moving(movement), remarks);
    }

    /** The drills in the order of the lesson. */
    public List<Drill> inOrder() {
        return lesson.drills().stream()
                .flatMap(load -> Optional.ofNullable(drills.get(load.drill())).stream())
                .toList();
    }

    /** How often a drill is gone through with each partner in each role. */
    public int repetitions(String drill) {
        return lesson.drills().stream()
                .filter(load -> load.drill().equals(drill))
                .mapToInt(DrillLoad::repetitions)
                .findFirst()
                .orElse(1);
    }

    /** What a drill is called; its id if the class doesn't have it. */
    public String title(String drill) {
        return Optional.ofNullable(drills.get(drill)).map(Drill::title).orElse(drill);
    }
}
