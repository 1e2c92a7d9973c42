package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Rounds in which one line stays at its posts and the other moves one post up at each change; whoever leaves the last post
 * walks round behind the first line to post 1.
 *
 * @param from the first round, counted from 1 over the whole class
 * @param to the last round
 * @param stays line A, from post 1 on, helpers too; {@link #REST} where nobody stands
 * @param moves line B as it stands in the first of these rounds, in the same way
 */
public record Walk(int from, int to, List<String> stays, List<String> moves) {

    /** Stands for a post at which one rests, or from which one joins a pair. */
    public static final String REST = "-";

    public Walk {
        stays = List.copyOf(stays);
        moves = List.copyOf(moves);
    }

    public boolean holds(int round) {
        return from <= round && round <= to;
    }

    /** How many posts a line has. */
    public int length() {
        return stays.size();
    }

    public boolean hasRest() {
        return stays.contains(REST) || moves.contains(REST);
    }

    /** Everybody in the two lines, helpers too. */
    public List<String> people() {
        return Stream.concat(stays.stream(), moves.stream())
                .filter(name -> !name.equals(REST))
                .toList();
    }

    /** The line somebody stands in, A or B; empty if in neither. */
    public String line(String person) {
        return stays.contains(person) ? "A" : moves.contains(person) ? "B" : "";
    }

    /** The post, from 1, at which somebody of the two lines is in a round. */
    public int post(String person, int round) {
        return stays.contains(person)
                ? stays.indexOf(person) + 1
                : (moves.indexOf(person) + round - from) % length() + 1;
    }

    /** Who stands in both, but in the other line in the second; in the order of the second's lines. */
    static List<String> changing(Walk before, Walk after) {
        List<String> changing = new ArrayList<>(after.people());
        changing.removeIf(
                name -> before.line(name).isEmpty() || before.line(name).equals(after.line(name)));
        return changing;
    }
}
