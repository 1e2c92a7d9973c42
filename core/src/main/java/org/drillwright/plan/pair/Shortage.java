package org.drillwright.plan.pair;

import java.util.List;

/**
 * Why not everyone has a partner, as countable facts.
 *
 * @param drill the drill of which it is told
 * @param fresh students who are new to it
 * @param knowing students who know it
 * @param pairs the most pairs that can be made with nobody kept from a safe partner
 * @param left students who then remain: one only if the number of students is odd
 * @param helped of these, how many work with the instructor or assistants
 * @param parity whether they remain only because the number of students is odd
 */
public record Shortage(String drill, int fresh, int knowing, int pairs, int left, int helped, boolean parity) {

    /** The facts in one sentence. */
    public String sentence() {
        if (parity && fresh + knowing == 1) {
            return "One student alone" + (helped == 1 ? " works with the instructor." : " does solo work.");
        }
        if (parity) {
            return (fresh + knowing) + " students are an odd number: one is left over each round"
                    + (helped == 1 ? " and works with the instructor, by turns." : ".");
        }
        if (fresh > knowing) {
            return fresh + " are new to this drill and " + counted(knowing, "knows", "know") + " it: at most "
                    + counted(pairs, "safe pair", "safe pairs") + "; " + left + " remain.";
        }
        return "With those kept apart, at most " + counted(pairs, "safe pair", "safe pairs") + " can be made of "
                + (fresh + knowing) + " students; " + left + " remain.";
    }

    /** What can be done about it, one sentence for each choice; {@code helpers} is how many could work with a student. */
    public List<String> choices(int helpers) {
        if (parity || left == 0) {
            return List.of();
        }
        int taken = Math.min(helpers, left);
        int rest = left - taken;
        int threes = Math.min(rest, pairs);
        String first = taken == 0
                ? "all " + left + " do solo work or watch"
                : counted(taken, "works", "work") + " with the instructor or an assistant, "
                        + counted(rest, "does solo work or watches", "do solo work or watch");
        String second = counted(threes, "three", "threes") + ", each with one who knows the drill"
                + (taken == 0 ? "" : ", and " + taken + " with the instructor or an assistant")
                + (rest == threes
                        ? ": everyone is with someone who knows it"
                        : "; " + counted(rest - threes, "does", "do") + " solo work");
        String third = "allow " + counted(left / 2, "pair", "pairs") + " of two who are both new";
        return List.of("solo: " + first + ".", "threes: " + second + ".", "both-new: " + third + ".");
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
