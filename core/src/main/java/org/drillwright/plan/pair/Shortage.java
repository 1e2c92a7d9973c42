package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.record.History;

/**
 * Why not everyone has a partner, as countable facts: those of the first round of a drill, as it was planned.
 *
 * @param drill the drill of which it is told
 * @param fresh students who are new to it
 * @param knowing students who know it
 * @param solo the round if whoever has no partner worked alone
 * @param helpers who work with one of them, or could; none if nobody does
 * @param threes the round if thirds joined pairs
 * @param bothNew the round if those who are new worked together
 */
public record Shortage(
        String drill, int fresh, int knowing, Extras solo, List<String> helpers, Extras threes, Extras bothNew) {

    public Shortage {
        helpers = List.copyOf(helpers);
    }

    /** The most pairs that can be made with nobody kept from a safe partner. */
    public int pairs() {
        return (fresh + knowing - left()) / 2;
    }

    /** Students who then remain: one only if the number of students is odd. */
    public int left() {
        return solo.helpers() + solo.blanks();
    }

    /** Of these, how many work with the instructor or assistants. */
    public int helped() {
        return solo.helpers();
    }

    /** Whether they remain only because the number of students is odd. */
    public boolean parity() {
        return left() == (fresh + knowing) % 2;
    }

    /** The facts in one sentence. */
    public String sentence() {
        if (parity() && fresh + knowing == 1) {
            return "One student alone" + (helped() == 1 ? " works with " + helper() + "." : " does solo work.");
        }
        if (parity()) {
            return (fresh + knowing) + " students is an odd number: one is left over in each round"
                    + (helped() == 1 ? " and works with " + helper() + ", in turn." : ".");
        }
        if (fresh > knowing) {
            return fresh + " are new to this drill and "
                    + (knowing == 0 ? "nobody knows" : counted(knowing, "knows", "know")) + " it: " + most() + "; "
                    + counted(left(), "remains", "remain") + ".";
        }
        return "With the people kept apart, " + most() + " can be made of " + (fresh + knowing) + " students; "
                + counted(left(), "remains", "remain") + ".";
    }

    private String most() {
        return pairs() == 0 ? "no safe pair" : "at most " + counted(pairs(), "safe pair", "safe pairs");
    }

    /** What can be done about it, one sentence for each choice that there is. */
    public List<String> choices() {
        if (parity() || left() == 0) {
            return List.of();
        }
        List<String> choices = new ArrayList<>();
        int alone = solo.blanks();
        choices.add("solo: "
                + (helped() == 0
                        ? "all " + left() + " do solo work or watch."
                        : helping(helped())
                                + (alone == 0
                                        ? "."
                                        : ", " + counted(alone, "does solo work or watches", "do solo work or watch")
                                                + ".")));
        if (threes.threes() > 0) {
            choices.add("threes: " + counted(threes.threes(), "three", "threes") + ", each with one who knows the drill"
                    + rest(threes, ": everyone works with someone who knows it."));
        }
        if (bothNew.watched() > 0) {
            choices.add("both-new: " + counted(bothNew.watched(), "pair", "pairs") + " of two who are both new"
                    + (bothNew.threes() == 0 ? "" : ", " + counted(bothNew.threes(), "three", "threes"))
                    + rest(bothNew, "."));
        }
        return List.copyOf(choices);
    }

    private String rest(Extras way, String nobodyAlone) {
        return (way.helpers() == 0 ? "" : ", and " + helping(way.helpers()))
                + (way.blanks() == 0 ? nobodyAlone : "; " + counted(way.blanks(), "does", "do") + " solo work.");
    }

    private String helping(int count) {
        return counted(count, "works", "work") + " with " + helper();
    }

    private String helper() {
        return helpers.stream()
                .map(name -> name.equals(History.INSTRUCTOR) ? "the instructor" : name)
                .collect(Collectors.joining(" or "));
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
