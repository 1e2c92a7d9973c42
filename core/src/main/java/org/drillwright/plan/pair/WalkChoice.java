package org.drillwright.plan.pair;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One way for a class to change over, and its price, counted in the plan that comes of it.
 *
 * @param formings how often the class forms two lines; 0 if everybody reads the sheet each time
 * @param read drills that are read from the sheet
 * @param change how many change line, and how often at most
 * @param again how many pairs meet again in which round
 * @param pairs how many pairs meet more than once
 * @param usual whether it is taken where nothing is asked for
 */
public record WalkChoice(
        int formings, List<String> read, Changes change, Map<Integer, Integer> again, int pairs, boolean usual) {

    private static final List<String> NUMBERS = List.of("no", "one", "two", "three", "four", "five", "six");

    /**
     * Who stands in another line later on.
     *
     * @param people how many
     * @param most how often one of them changes at most
     */
    public record Changes(int people, int most) {}

    public WalkChoice {
        read = List.copyOf(read);
        again = Map.copyOf(again);
    }

    /** What it is asked for by: {@code 1}, {@code 2} or {@code free}; empty for more formings. */
    public String word() {
        return formings == 0 ? "free" : formings > 2 ? "" : String.valueOf(formings);
    }

    /** Such as {@code two formings}. */
    public String name() {
        return formings == 0
                ? "free"
                : (formings < NUMBERS.size() ? NUMBERS.get(formings) : String.valueOf(formings))
                        + (formings == 1 ? " forming" : " formings");
    }

    /** What people have to do for it. */
    public String effort() {
        if (formings == 0) {
            return "everyone reads the sheet";
        }
        String said = change.people() == 0
                ? "nobody changes lines"
                : change.people() + (change.people() == 1 ? " changes" : " change") + " lines"
                        + (change.most() < 2 ? " once" : ", some of them " + change.most() + " times");
        return said + (read.isEmpty() ? "" : "; everyone reads the sheet for " + String.join(", ", read));
    }

    /** Who meets again for it. */
    public String price() {
        if (pairs == 0) {
            return "nobody meets again";
        }
        List<Integer> rounds = List.copyOf(new TreeMap<>(again).keySet());
        String when = rounds.size() == 1
                ? "round " + rounds.get(0)
                : "rounds " + rounds.get(0) + (rounds.size() == 2 ? " and " : " to ") + rounds.get(rounds.size() - 1);
        return pairs + (pairs == 1 ? " pair meets" : " pairs meet") + " again, in " + when;
    }
}
