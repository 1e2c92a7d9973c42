package org.drillwright.plan.evening;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.drillwright.model.Drill;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.register.History;

/**
 * What somebody who teaches this class for once has to know of a person.
 *
 * @param newTo ids of tonight's drills that the person doesn't know, in the order of the lesson
 * @param apart those of tonight with whom the person never works
 * @param solo does only solo work tonight
 * @param weeks since the person came last; nothing for who never came, or if no class is on record
 * @param first whether this is the first class, once a few classes are on record
 */
public record Heed(
        Person person, List<String> newTo, List<String> apart, boolean solo, Optional<Long> weeks, boolean first) {

    /** With fewer classes on record it means little that somebody isn't in them. */
    private static final int ENOUGH = 3;

    public Heed {
        newTo = List.copyOf(newTo);
        apart = List.copyOf(apart);
    }

    /** Of everyone who is here, in the order of the roster. */
    public static List<Heed> of(ClassPlan plan, Roster roster, History history) {
        LocalDate day = plan.brief().date();
        History before = history.before(day);
        Knowledge knowledge = Knowledge.of(roster, before);
        Attendance attendance =
                Attendance.of(before, roster.people().stream().map(Person::name).toList());
        return plan.here().stream()
                .map(person -> of(person, plan, roster, knowledge, attendance))
                .toList();
    }

    private static Heed of(Person person, ClassPlan plan, Roster roster, Knowledge knowledge, Attendance attendance) {
        String name = person.name();
        Predicate<Drill> unknown = drill -> !knowledge.knows(name, drill.id());
        Optional<LocalDate> last = attendance.came().containsKey(name)
                ? attendance.came().get(name).stream().max(LocalDate::compareTo)
                : Optional.empty();
        return new Heed(
                person,
                plan.inOrder().stream().filter(unknown).map(Drill::id).toList(),
                plan.here().stream()
                        .map(Person::name)
                        .filter(other -> roster.areApart(name, other))
                        .toList(),
                person.solo() || plan.brief().solo().contains(name),
                last.map(then -> ChronoUnit.WEEKS.between(then, plan.brief().date())),
                last.isEmpty() && attendance.held().size() >= ENOUGH);
    }
}
