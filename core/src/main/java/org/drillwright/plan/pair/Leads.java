package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.roster.First;
import org.drillwright.plan.roster.Mode;

/**
 * Who of two leads first, and so stands first in a group. In two lines the line that stays does in odd rounds, the line that
 * moves in even ones. Else the pairs are gone through as the edges of trails that begin wherever somebody has an odd number
 * of them: so nobody leads first more than once oftener than not, or once less (Euler 1736). Of three the middle one does.
 */
final class Leads {

    private final PairingRequest request;
    private final List<Walk> walks;
    private final List<Round> rounds;
    private final Map<String, List<int[]>> open = new HashMap<>();
    private final Map<List<Integer>, String> first = new HashMap<>();

    private Leads(PairingRequest request, List<Walk> walks, List<Round> rounds) {
        this.request = request;
        this.walks = walks;
        this.rounds = rounds;
    }

    /** The rounds with whoever leads first standing first; those already played stay as they are. */
    static List<Round> of(PairingRequest request, List<Walk> walks, List<Round> rounds) {
        Leads leads = new Leads(request, walks, rounds);
        leads.choose();
        return leads.turned();
    }

    private void choose() {
        for (int round = request.played().size(); round < rounds.size(); round++) {
            List<Group> groups = rounds.get(round).groups();
            for (int at = 0; at < groups.size(); at++) {
                if (groups.get(at).people().size() == 2) {
                    Optional<String> leader = fixed(round, groups.get(at));
                    if (leader.isPresent()) {
                        first.put(List.of(round, at), leader.get());
                    } else {
                        int[] pair = {round, at};
                        groups.get(at)
                                .people()
                                .forEach(name -> open.computeIfAbsent(name, one -> new ArrayList<>())
                                        .add(pair));
                    }
                }
            }
        }
        List<String> names =
                request.students().stream().map(student -> student.name()).toList();
        names.stream().filter(name -> left(name).size() % 2 == 1).forEach(this::trail);
        names.forEach(name -> {
            while (!left(name).isEmpty()) {
                trail(name);
            }
        });
    }

    private List<int[]> left(String name) {
        return open.getOrDefault(name, List.of());
    }

    /** From one to the next, each leading, as long as there is a pair not yet gone through. */
    private void trail(String from) {
        String at = from;
        while (!left(at).isEmpty()) {
            int[] pair = left(at).get(0);
            List<String> two = rounds.get(pair[0]).groups().get(pair[1]).people();
            first.put(List.of(pair[0], pair[1]), at);
            two.forEach(name -> left(name).remove(pair));
            at = two.get(two.get(0).equals(at) ? 1 : 0);
        }
    }

    private Optional<String> fixed(int round, Group group) {
        String one = group.people().get(0);
        String other = group.people().get(1);
        String drill = rounds.get(round).drill();
        if (request.ways().first() == First.KNOWER
                && request.mode() == Mode.LEARNING
                && request.isNew(one, drill) != request.isNew(other, drill)) {
            return Optional.of(request.isNew(one, drill) ? other : one);
        }
        boolean odd = round % 2 == 0;
        return walks.stream()
                .filter(walk -> walk.holds(rounds.get(round).number()))
                .findFirst()
                .map(walk -> walk.stays().contains(one) == odd ? one : other);
    }

    private List<Round> turned() {
        List<Round> all = new ArrayList<>(rounds.subList(0, request.played().size()));
        for (int round = all.size(); round < rounds.size(); round++) {
            List<Group> groups = new ArrayList<>();
            for (int at = 0; at < rounds.get(round).groups().size(); at++) {
                Group group = rounds.get(round).groups().get(at);
                groups.add(Optional.ofNullable(first.get(List.of(round, at)))
                        .map(group::ledBy)
                        .orElse(group));
            }
            all.add(new Round(round + 1, rounds.get(round).drill(), groups));
        }
        return all;
    }
}
