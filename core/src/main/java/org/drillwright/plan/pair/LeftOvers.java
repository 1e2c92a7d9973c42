package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.Matching;

/**
 * Finds work for those who have no partner in a round, so that nobody is lost: they join a pair, work alone, or, only
 * where it was asked for, work with one who is new as well.
 */
final class LeftOvers {

    /** Solo work is chosen only where no pair may be joined. */
    private static final int SOLO = 1_000_000;

    private static final int MET_TODAY = 1_000;

    private final PairingRequest request;
    private final Map<Set<String>, Integer> met = new HashMap<>();

    /** @param before the rounds of today that come earlier */
    LeftOvers(PairingRequest request, List<Round> before) {
        this.request = request;
        before.forEach(round -> round.groups().forEach(this::meet));
    }

    private void meet(Group group) {
        for (String one : group.people()) {
            for (String other : group.people()) {
                if (one.compareTo(other) < 0) {
                    met.merge(Set.of(one, other), 1, Integer::sum);
                }
            }
        }
    }

    /** The groups of a round, with those who are left put to work. */
    List<Group> placed(List<Group> groups, List<String> left) {
        return switch (request.leftOver()) {
            case THREES -> threes(groups, left);
            case BOTH_NEW -> pairs(groups, left);
            case SOLO -> solo(groups, left);
        };
    }

    private static List<Group> solo(List<Group> groups, List<String> left) {
        List<Group> all = new ArrayList<>(groups);
        left.forEach(name -> all.add(new Group(Group.Kind.SOLO, 0, List.of(name), Optional.empty())));
        return all;
    }

    private List<Group> pairs(List<Group> groups, List<String> left) {
        List<Edge> edges = new ArrayList<>();
        for (int one = 0; one < left.size(); one++) {
            for (int other = one + 1; other < left.size(); other++) {
                if (!areApart(left.get(one), left.get(other))) {
                    edges.add(new Edge(one, other, 0));
                }
            }
        }
        int[] mates = Matching.largest(left.size(), edges);
        List<Group> all = new ArrayList<>(groups);
        List<String> alone = new ArrayList<>();
        for (int one = 0; one < mates.length; one++) {
            if (mates[one] == Matching.NOBODY) {
                alone.add(left.get(one));
            } else if (one < mates[one]) {
                List<String> two = List.of(left.get(one), left.get(mates[one]));
                all.add(new Group(Group.Kind.BOTH_NEW, 0, two, Optional.empty()));
            }
        }
        return solo(all, alone);
    }

    /**
     * One vertex for each who is left, one for each of them alone, one for each group, and one more if that makes the
     * number even. A group that nobody joins is matched with another or with an unused vertex of being alone.
     */
    private List<Group> threes(List<Group> groups, List<String> left) {
        int people = left.size();
        int vertices = 2 * people + groups.size() + groups.size() % 2;
        List<Edge> edges = new ArrayList<>();
        for (int one = 0; one < people; one++) {
            edges.add(new Edge(one, people + one, SOLO));
            for (int group = 0; group < groups.size(); group++) {
                if (mayJoin(left.get(one), groups.get(group))) {
                    edges.add(new Edge(one, 2 * people + group, cost(left.get(one), groups.get(group))));
                }
            }
        }
        for (int spare = people; spare < vertices; spare++) {
            for (int other = Math.max(spare + 1, 2 * people); other < vertices; other++) {
                edges.add(new Edge(spare, other, 0));
            }
        }
        for (int spare = people; spare < 2 * people; spare++) {
            for (int other = spare + 1; other < 2 * people; other++) {
                edges.add(new Edge(spare, other, 0));
            }
        }
        int[] mates = Matching.leastWeight(vertices, edges).orElseThrow();
        return joined(groups, left, Arrays.copyOf(mates, people));
    }

    private List<Group> joined(List<Group> groups, List<String> left, int[] mates) {
        List<Group> all = new ArrayList<>(groups);
        List<String> alone = new ArrayList<>();
        for (int one = 0; one < mates.length; one++) {
            int group = mates[one] - 2 * mates.length;
            if (group < 0) {
                alone.add(left.get(one));
            } else {
                all.set(group, joinedBy(all.get(group), left.get(one)));
            }
        }
        return solo(all, alone);
    }

    private Group joinedBy(Group group, String third) {
        List<String> people = request.students().stream()
                .map(student -> student.name())
                .filter(name -> group.holds(name) || name.equals(third))
                .toList();
        return new Group(Group.Kind.THREE, group.place(), people, group.helper());
    }

    private boolean mayJoin(String name, Group group) {
        return group.people().stream().noneMatch(other -> areApart(name, other))
                && group.helper().filter(helper -> areApart(name, helper)).isEmpty();
    }

    private boolean areApart(String one, String other) {
        return request.apart().stream().anyMatch(pair -> pair.parts(one, other));
    }

    private int cost(String name, Group group) {
        int times = group.people().stream()
                .mapToInt(other -> met.getOrDefault(Set.of(name, other), 0))
                .sum();
        // An extra helper in the group serves better than two students do.
        return Math.min(times, 99) * MET_TODAY + (group.helper().isPresent() ? 0 : 1);
    }
}
