package org.drillwright.tell;

import java.util.List;
import java.util.function.ToIntFunction;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Three;
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
    private static String helper(String name, Naming names) {
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

    /** Who works with whom in a three, and how many repetitions end with those of the pairs. */
    public static List<String> threes(PairingPlan pairs, ToIntFunction<String> repetitions) {
        return Three.of(pairs, repetitions).stream()
                .map(three -> three.drill() + ": " + three(three))
                .toList();
    }

    private static String three(Three three) {
        String turns = three.middle()
                ? "in a three the middle one leads each of the others in turn, then each of them leads; whoever"
                        + " is waiting counts"
                : "in a three the first leads the second, the second the third, the third the first; whoever is"
                        + " waiting counts";
        return turns
                + (three.canEndWithPairs()
                        ? ", " + three.fewer() + (three.fewer() == 1 ? " time" : " times") + " in each role, not "
                                + three.repetitions() + ", to finish with the others."
                        : three.middle() ? ". It takes twice as long." : ". It takes half as long again.");
    }
}
