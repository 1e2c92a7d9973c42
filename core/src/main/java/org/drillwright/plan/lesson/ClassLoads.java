package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Timing;

/**
 * What the drills of one class ask of its time.
 *
 * @param loads for {@link Lesson}, in the wished order
 * @param unmet needs that are neither known to everyone here nor taught in this class
 */
public record ClassLoads(List<DrillLoad> loads, List<Remark> unmet) {

    public ClassLoads {
        loads = List.copyOf(loads);
        unmet = List.copyOf(unmet);
    }

    /**
     * The drills that a class may choose from.
     *
     * @param drills in the wished order
     * @param here everyone who is here
     * @param rounds partners on each drill for which the brief names no number
     */
    public static ClassLoads of(
            School school, ClassBrief brief, List<Drill> drills, List<Person> here, Knowledge knowledge, int rounds) {
        List<DrillLoad> loads = new ArrayList<>();
        List<Remark> unmet = new ArrayList<>();
        for (Drill drill : drills) {
            Duration explain = explain(
                    brief.timing(), strangers(drill.id(), here, knowledge).size(), here.size());
            List<String> needs = drill.needs().stream()
                    .filter(need -> !strangers(need, here, knowledge).isEmpty())
                    .toList();
            loads.add(DrillLoad.of(
                    drill,
                    brief.wanted(drill.id()),
                    school.count(),
                    brief.timing(),
                    brief.rounds().orElse(rounds),
                    explain,
                    needs));
            for (String need : needs) {
                if (drills.stream().noneMatch(other -> other.id().equals(need))) {
                    List<String> strangers = strangers(need, here, knowledge);
                    boolean all = here.size() > 1 && strangers.size() == here.size();
                    unmet.add(new Remark.Unmet(drill.id(), need, strangers, all));
                }
            }
        }
        return new ClassLoads(loads, unmet);
    }

    private static Duration explain(Timing timing, int strangers, int here) {
        return strangers == 0
                ? timing.explainKnown()
                : strangers < here ? timing.explainNew() : timing.explainNew().plus(timing.wholeClass());
    }

    private static List<String> strangers(String drill, List<Person> here, Knowledge knowledge) {
        return here.stream()
                .map(Person::name)
                .filter(name -> !knowledge.knows(name, drill))
                .toList();
    }
}
