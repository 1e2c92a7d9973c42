package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;

/**
 * Two lines of which one walks, so that nobody needs a table.
 *
 * @param left who stays, from place 1
 * @param right who is opposite in the first round
 * @param step how many places those on the right go on at a change, 1 or -1; who leaves one end comes to the other
 */
record TwoLines(List<String> left, List<String> right, int step) {

    TwoLines {
        left = List.copyOf(left);
        right = List.copyOf(right);
    }

    /** The lines, if all rounds of a class come out as they walk. */
    static Optional<TwoLines> of(PairingPlan pairs) {
        List<Round> rounds = pairs.rounds();
        if (pairs.firstPlanned() > 0 || rounds.size() < 2) {
            return Optional.empty();
        }
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (int place = 1; place <= rounds.get(0).groups().size(); place++) {
            List<String> there = at(rounds.get(0), place);
            List<String> next = at(rounds.get(1), place);
            List<String> stay = there.stream().filter(next::contains).toList();
            if (there.size() != 2 || stay.size() != 1) {
                return Optional.empty();
            }
            left.add(stay.get(0));
            right.add(there.get(there.indexOf(stay.get(0)) == 0 ? 1 : 0));
        }
        return IntStream.of(-1, 1)
                .mapToObj(step -> new TwoLines(left, right, step))
                .filter(lines -> rounds.stream().allMatch(lines::makes))
                .findFirst();
    }

    private boolean makes(Round round) {
        return round.groups().size() == left.size()
                && round.groups().stream().allMatch(group -> isPair(group) && isLed(group, round.number()))
                && IntStream.range(0, left.size())
                        .allMatch(at -> at(round, at + 1).size() == 2
                                && at(round, at + 1).containsAll(List.of(left.get(at), opposite(at, round.number()))));
    }

    /** By the left in odd rounds, by the right in even ones; with somebody who helps, it is for the two to say. */
    private boolean isLed(Group group, int round) {
        return group.helper().isPresent() || left.contains(group.people().get(0)) == (round % 2 == 1);
    }

    private static boolean isPair(Group group) {
        return group.kind() == Group.Kind.PAIR
                || group.kind() == Group.Kind.WATCHED
                || group.kind() == Group.Kind.HELPED;
    }

    /** Who stands opposite a post, counted from 0, in a round, counted from 1. */
    String opposite(int post, int round) {
        return right.get(Math.floorMod(post - step * (round - 1), right.size()));
    }

    /** Whoever works at a place, helpers too. */
    private static List<String> at(Round round, int place) {
        List<String> there = new ArrayList<>();
        for (Group group : round.groups()) {
            if (group.place() == place) {
                there.addAll(group.everyone());
            }
        }
        return there;
    }
}
