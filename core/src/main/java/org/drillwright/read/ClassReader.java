package org.drillwright.read;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.Weapon;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.First;
import org.drillwright.plan.roster.Habits;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Roster;
import org.drillwright.plan.roster.Wanted;
import org.drillwright.source.Field;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * Reads what is asked for one class.
 *
 * <pre>{@code
 * date: 2026-09-14
 * minutes: 60
 * mode: learning
 * drills: [straight-thrust, parry-of-quarte]
 * settings:
 *   parry-of-quarte: {rounds: 3, repetitions: 6, value: 5}
 * away: [Ash]
 * hall: {length: 18, width: 10}
 * }</pre>
 */
public final class ClassReader {

    private final School school;
    private final Roster roster;
    private final Set<String> drills;
    private final Habits habits;

    /** For a school without habits of its own. */
    public ClassReader(School school, Roster roster, Collection<String> drills) {
        this(school, Habits.USUAL, roster, drills);
    }

    /**
     * For the classes of a school.
     *
     * @param habits what holds where a class says nothing
     * @param drills ids of the school's drills
     */
    public ClassReader(School school, Habits habits, Roster roster, Collection<String> drills) {
        this.school = school;
        this.habits = habits;
        this.roster = roster;
        this.drills = Set.copyOf(drills);
    }

    /** @param name the file's name as it is shown */
    public Reading<ClassBrief> read(String name, byte[] bytes) {
        return NodeReader.reading(name, bytes, () -> FileKeys.of(shape()), nodes -> {
            MappingReader keys = nodes.root();
            ClassBrief brief = brief(keys);
            keys.finish();
            brief.settings().keySet().stream()
                    .filter(drill -> !drills.contains(drill))
                    .sorted()
                    .forEach(drill -> unknownDrill(drill, nodes));
            return brief;
        });
    }

    /** What a file of a class may hold. */
    public Shape.Group shape() {
        return ShapeRecorder.of(this::brief);
    }

    private ClassBrief brief(Keys keys) {
        List<String> ids = drills.stream().sorted().toList();
        List<String> people = Stream.concat(roster.names().stream(), roster.former().keySet().stream())
                .distinct()
                .sorted()
                .toList();
        keys.need("date");
        keys.needOneOf(List.of("set", "drills"));
        OptionalInt minutes = keys.wholeNumber("minutes", 1, 1000);
        return new ClassBrief(
                keys.date("date").orElse(LocalDate.EPOCH),
                minutes.isPresent() ? Optional.of(Duration.ofMinutes(minutes.getAsInt())) : Optional.empty(),
                keys.choice("weapon", List.of(Weapon.values()), Weapon::word),
                keys.choice("mode", List.of(Mode.values()), Mode::word).orElse(Mode.LEARNING),
                keys.names("drills", ids),
                keys.name("set", sets()),
                settings(keys),
                keys.wholeNumber("rounds", 1, 40),
                keys.choice("movement", List.of(Movement.values()), Movement::word)
                        .orElse(Movement.WALK),
                ways(keys),
                keys.yesOrNo("instructor").orElse(true),
                present(keys.names("away", people)),
                present(keys.names("solo", people)),
                HabitReader.timing(keys, habits.timing()),
                HabitReader.hall(keys, habits.hall()),
                HabitReader.blocks(keys, habits.blocks()));
    }

    private static ClassPractice ways(Keys keys) {
        ClassPractice usual = keys.choice("left-over", List.of(LeftOver.values()), LeftOver::word)
                .map(ClassPractice::of)
                .orElse(ClassPractice.USUAL);
        return new ClassPractice(
                usual.leftOver(),
                keys.choice("both-new", List.of(BothNew.values()), BothNew::word)
                        .orElse(usual.bothNew()),
                keys.wholeNumber("eyes", 1, 100).orElse(usual.eyes()),
                keys.choice("first", List.of(First.values()), First::word).orElse(usual.first()));
    }

    /** As they are called now. */
    private Set<String> present(List<String> names) {
        return names.stream()
                .map(name ->
                        roster.names().contains(name) ? name : roster.former().getOrDefault(name, name))
                .collect(Collectors.toSet());
    }

    /** The school's sets, and its levels, each of which counts as one. */
    private List<String> sets() {
        return Stream.concat(
                        school.sets().stream().map(DrillSet::name),
                        school.levels().stream().map(Level::name))
                .distinct()
                .toList();
    }

    private static Map<String, Wanted> settings(Keys keys) {
        return keys.group(
                        "settings",
                        named -> named.<Wanted>byName((all, drill) -> all.group(drill, one -> wanted(drill, one))))
                .orElse(Map.of());
    }

    private void unknownDrill(String drill, NodeReader nodes) {
        FieldPath at = FieldPath.of("settings").key(drill);
        nodes.findings()
                .error(
                        ReadingRule.UNKNOWN_WORD.id(),
                        nodes.places().field(at).map(Field::key).orElse(Span.at(0)),
                        Nearest.unknown(drill),
                        Nearest.meant(drill, drills).orElse(Message.of(ClassReader.class, "settings.of.drills")));
    }

    private static Wanted wanted(String drill, Keys keys) {
        OptionalInt explain = keys.wholeNumber("explain", 0, 3_600);
        Wanted wanted = new Wanted(
                drill,
                keys.wholeNumber("value", 1, 100).orElse(1),
                keys.yesOrNo("must").orElse(false),
                keys.wholeNumber("repetitions", 1, 999),
                keys.wholeNumber("rounds", 1, 40),
                explain.isPresent() ? Optional.of(Duration.ofSeconds(explain.getAsInt())) : Optional.empty());
        keys.finish();
        return wanted;
    }
}
