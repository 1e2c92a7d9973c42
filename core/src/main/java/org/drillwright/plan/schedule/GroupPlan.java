package org.drillwright.plan.schedule;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.course.CoursePlan;
import org.drillwright.plan.course.Goal;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.term.TermGroup;

/**
 * A term of one group.
 *
 * @param shortOf the drills of the exam that will lack workings, and how many
 * @param found the plan of the classes to come; nothing if there are none
 * @param ready who may be signed off in what
 * @param changed what is otherwise than it was published, one sentence each
 * @param left drills that are new in no class, and why, in the order in which they are taught
 */
public record GroupPlan(
        TermGroup group,
        List<ClassRow> classes,
        List<CatchUp> catchUps,
        List<Fundamental> fundamentals,
        Map<String, Integer> shortOf,
        Optional<CoursePlan> found,
        List<PersonDrill> ready,
        List<String> changed,
        Map<String, String> left) {

    public GroupPlan {
        classes = List.copyOf(classes);
        catchUps = List.copyOf(catchUps);
        fundamentals = List.copyOf(fundamentals);
        shortOf = Map.copyOf(shortOf);
        ready = List.copyOf(ready);
        changed = List.copyOf(changed);
        left = Collections.unmodifiableMap(new LinkedHashMap<>(left));
    }

    /** How many workings for the exam are missing. */
    public int missing() {
        return shortOf.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** How good the plan is known to be, as a sentence. */
    public String verdict() {
        if (found.isEmpty()) {
            return "There is nothing left to plan.";
        }
        CoursePlan plan = found.get();
        if (plan.isProvedBest()) {
            return "Proved best.";
        }
        Goal open = Goal.EXAM;
        for (Goal goal : Goal.values()) {
            if (plan.row().of(goal) != plan.bound().row().of(goal)) {
                open = goal;
                break;
            }
        }
        return "No better plan is known; another could be better in " + open.words() + ", by "
                + (plan.row().of(open) - plan.bound().row().of(open)) + " at most.";
    }

    /** Why workings for the exam are missing, as a sentence; nothing if none are, or it isn't a matter of room. */
    public Optional<String> crowd() {
        return found.flatMap(plan -> plan.bound().crowd()).map(crowd -> {
            String by =
                    crowd.by().map(LocalDate::toString).map(day -> "by " + day).orElse("before the next class");
            return crowd.due() + " must be new " + by + ", with " + crowd.places()
                    + (crowd.places() == 1 ? " place." : " places.");
        });
    }
}
