package org.drillwright.plan.schedule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.course.CoursePlan;
import org.drillwright.plan.course.Goal;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.wording.Message;

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
        List<Message> changed,
        Map<String, Message> left) {

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
    public Message verdict() {
        if (found.isEmpty()) {
            return Message.of(GroupPlan.class, "nothing.left");
        }
        CoursePlan plan = found.get();
        if (plan.isProvedBest()) {
            return Message.of(GroupPlan.class, "best");
        }
        Goal open = Goal.EXAM;
        for (Goal goal : Goal.values()) {
            if (plan.row().of(goal) != plan.bound().row().of(goal)) {
                open = goal;
                break;
            }
        }
        return Message.of(
                GroupPlan.class,
                "better",
                open.words(),
                plan.row().of(open) - plan.bound().row().of(open));
    }

    /** Why workings for the exam are missing, as a sentence; nothing if none are, or it isn't a matter of room. */
    public Optional<Message> crowd() {
        return found.flatMap(plan -> plan.bound().crowd())
                .map(crowd -> crowd.by()
                        .map(day -> Message.counted(
                                GroupPlan.class, "crowd.by", crowd.places(), crowd.due(), Message.day(day)))
                        .orElseGet(() -> Message.counted(GroupPlan.class, "crowd.next", crowd.places(), crowd.due())));
    }
}
