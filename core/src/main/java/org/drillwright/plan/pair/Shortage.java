package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;

/**
 * Why not everyone has a partner, as countable facts: those of the first round of a drill, as it was planned.
 *
 * @param drill the drill of which it is told
 * @param fresh students who are new to it
 * @param knowing students who know it
 * @param pairs the most pairs that can be made with nobody kept from a safe partner
 * @param left students who then remain: one only if the number of students is odd
 * @param helped of these, how many work with the instructor or assistants
 * @param helper who works with one of them, as a sentence says it; empty if nobody does
 * @param parity whether they remain only because the number of students is odd
 * @param threes what would come of joining pairs
 * @param bothNew what would come of pairing those who are new
 */
public record Shortage(
        String drill,
        int fresh,
        int knowing,
        int pairs,
        int left,
        int helped,
        String helper,
        boolean parity,
        Way threes,
        Way bothNew) {

    /**
     * What would come of a choice for those who have neither partner nor helper.
     *
     * @param groups threes, or pairs of two new ones
     * @param taught how many of these have a helper among them
     * @param helped who would work with a helper alone
     * @param alone who would still do solo work
     */
    public record Way(int groups, int taught, int helped, int alone) {}

    /** The facts in one sentence. */
    public String sentence() {
        if (parity && fresh + knowing == 1) {
            return "One student alone" + (helped == 1 ? " works with " + helper + "." : " does solo work.");
        }
        if (parity) {
            return (fresh + knowing) + " students are an odd number: one is left over each round"
                    + (helped == 1 ? " and works with " + helper + ", by turns." : ".");
        }
        if (fresh > knowing) {
            return fresh + " are new to this drill and " + counted(knowing, "knows", "know") + " it: at most "
                    + counted(pairs, "safe pair", "safe pairs") + "; " + counted(left, "remains", "remain") + ".";
        }
        return "With those kept apart, at most " + counted(pairs, "safe pair", "safe pairs") + " can be made of "
                + (fresh + knowing) + " students; " + counted(left, "remains", "remain") + ".";
    }

    /** What can be done about it, one sentence for each choice that there is. */
    public List<String> choices() {
        if (parity || left == 0) {
            return List.of();
        }
        List<String> choices = new ArrayList<>();
        choices.add("solo: "
                + (helped == 0
                        ? "all " + left + " do solo work or watch."
                        : left == helped
                                ? helping(helped) + "."
                                : helping(helped) + ", "
                                        + counted(left - helped, "does solo work or watches", "do solo work or watch")
                                        + "."));
        if (threes.groups() > 0) {
            choices.add("threes: " + counted(threes.groups(), "three", "threes")
                    + ", each with one who knows the drill" + (threes.taught() > 0 ? " or teaches" : "")
                    + rest(threes, ": everyone is with someone who knows it."));
        }
        if (bothNew.groups() > 0) {
            choices.add("both-new: " + counted(bothNew.groups(), "pair", "pairs") + " of two who are both new"
                    + rest(bothNew, "."));
        }
        return List.copyOf(choices);
    }

    private String rest(Way way, String nobodyAlone) {
        return (way.helped() == 0 ? "" : ", and " + helping(way.helped()))
                + (way.alone() == 0 ? nobodyAlone : "; " + counted(way.alone(), "does", "do") + " solo work.");
    }

    private String helping(int count) {
        return counted(count, "works", "work") + " with " + helper;
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
