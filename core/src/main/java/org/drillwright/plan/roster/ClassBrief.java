package org.drillwright.plan.roster;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.Weapon;

/**
 * What an instructor asks for one class.
 *
 * @param date the day of the class
 * @param length how long it lasts, if not the school's usual time
 * @param drills ids in the wished order; empty if {@code set} is named
 * @param set a set to choose from
 * @param settings what is asked of single drills, by id
 * @param rounds of partners on each drill that states none itself; absent: as many as fit
 * @param ways what is done for those who have no partner, and who leads first
 * @param instructor whether the instructor works with the odd one out
 * @param away names of those who aren't here
 * @param solo names of those who do only solo work
 * @param blocks parts of the lesson that are the school's own
 */
public record ClassBrief(
        LocalDate date,
        Optional<Duration> length,
        Optional<Weapon> weapon,
        Mode mode,
        List<String> drills,
        Optional<String> set,
        Map<String, Wanted> settings,
        OptionalInt rounds,
        Movement movement,
        ClassPractice ways,
        boolean instructor,
        Set<String> away,
        Set<String> solo,
        Timing timing,
        Optional<Hall> hall,
        List<OwnBlock> blocks) {

    public ClassBrief {
        drills = List.copyOf(drills);
        settings = Map.copyOf(settings);
        away = Set.copyOf(away);
        solo = Set.copyOf(solo);
        blocks = List.copyOf(blocks);
    }

    /** A learning class with the usual settings. */
    public static ClassBrief on(LocalDate date) {
        return new ClassBrief(
                date,
                Optional.empty(),
                Optional.empty(),
                Mode.LEARNING,
                List.of(),
                Optional.empty(),
                Map.of(),
                OptionalInt.empty(),
                Movement.WALK,
                ClassPractice.USUAL,
                true,
                Set.of(),
                Set.of(),
                Timing.USUAL,
                Optional.empty(),
                List.of());
    }

    /** What is asked of a drill. */
    public Wanted wanted(String drill) {
        return settings.getOrDefault(drill, Wanted.drill(drill));
    }

    /** Everyone of a roster who is here, those who do solo work too. */
    public List<Person> here(Roster roster) {
        return roster.people().stream()
                .filter(person -> !person.away() && !away.contains(person.name()))
                .toList();
    }
}
