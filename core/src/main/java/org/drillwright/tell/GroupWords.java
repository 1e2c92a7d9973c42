package org.drillwright.tell;

import java.util.List;
import java.util.function.ToIntFunction;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.record.History;

/** What is said of those who work together. */
public final class GroupWords {

    private GroupWords() {}

    /** People and helper, such as {@code Ash and Bo} or {@code Cy with the instructor}. */
    static String people(Group group, Naming names) {
        List<String> shown = group.people().stream().map(names::of).toList();
        String people = shown.size() < 2
                ? String.join("", shown)
                : String.join(", ", shown.subList(0, shown.size() - 1)) + " and " + shown.get(shown.size() - 1);
        return people
                + group.helper().map(name -> " with " + helper(name, names)).orElse("");
    }

    /** Whoever teaches is said, not named. */
    public static String helper(String name, Naming names) {
        return name.equals(History.INSTRUCTOR) ? "the instructor" : names.of(name);
    }

    /** What is to be said of a group beside its names; empty for a pair. */
    public static String remark(Group group, Naming names) {
        String eyes = group.eyes()
                .map(name -> "both new, " + helper(name, names) + " watches")
                .orElse("");
        return switch (group.kind()) {
            case PAIR, HELPED -> "";
            case WATCHED -> eyes;
            case THREE ->
                "three"
                        + group.middle()
                                .map(name -> ", " + names.of(name) + " in the middle")
                                .orElse("")
                        + eyes.replace("both new", ", all new");
            case SOLO -> "solo work";
            case BOTH_NEW -> "both new";
        };
    }

    /** How many repetitions give each of three as many turns as each of two has. */
    public static List<String> threes(PairingPlan pairs, ToIntFunction<String> repetitions) {
        return pairs.rounds().stream()
                .filter(round -> round.groups().stream().anyMatch(group -> group.kind() == Group.Kind.THREE))
                .map(Round::drill)
                .distinct()
                .map(drill -> drill + ": " + three(repetitions.applyAsInt(drill)))
                .toList();
    }

    private static String three(int repetitions) {
        long fewer = Math.round(repetitions * 2 / 3.0);
        return fewer == 0 || fewer == repetitions
                ? "a three takes half as long again, for equal turns."
                : "a three goes through it " + fewer + (fewer == 1 ? " time" : " times") + " in each role, not "
                        + repetitions + ", to end with the others.";
    }
}
