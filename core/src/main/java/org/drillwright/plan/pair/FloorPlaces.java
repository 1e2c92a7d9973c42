package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.plan.match.Edge;
import org.drillwright.plan.match.Matching;

/** Gives the groups of a round places on the floor, so that as many people as can be stay where they were. */
final class FloorPlaces {

    private FloorPlaces() {}

    /** The groups of the first round in their order. */
    static List<Group> first(List<Group> groups) {
        List<Group> placed = new ArrayList<>();
        int next = 1;
        for (Group group : groups) {
            placed.add(group.at(group.kind() == Group.Kind.SOLO ? 0 : next++));
        }
        return placed;
    }

    /** A later round: groups are matched with places, each costing as many as have to walk there. */
    static List<Group> after(Round before, List<Group> groups) {
        List<Group> working =
                groups.stream().filter(group -> group.kind() != Group.Kind.SOLO).toList();
        Map<String, Integer> was = new HashMap<>();
        before.groups().forEach(group -> group.people().forEach(person -> was.put(person, group.place())));
        List<Edge> edges = new ArrayList<>();
        int count = working.size();
        for (int group = 0; group < count; group++) {
            for (int place = 0; place < count; place++) {
                edges.add(new Edge(group, count + place, walkers(was, working.get(group), place + 1)));
            }
        }
        int[] mates = Matching.leastWeight(2 * count, edges).orElseThrow();
        List<Group> placed = new ArrayList<>(groups);
        for (int at = 0; at < placed.size(); at++) {
            int group = working.indexOf(placed.get(at));
            placed.set(at, placed.get(at).at(group < 0 ? 0 : mates[group] - count + 1));
        }
        return placed;
    }

    private static int walkers(Map<String, Integer> before, Group group, int place) {
        int walkers = 0;
        for (String person : group.people()) {
            walkers += before.getOrDefault(person, 0) == place ? 0 : 1;
        }
        return walkers;
    }
}
