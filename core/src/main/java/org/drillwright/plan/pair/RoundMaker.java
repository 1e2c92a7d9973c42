package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.Solution;

/** Turns a table of numbers back into rounds of people at places. */
final class RoundMaker {

    private static final Comparator<Group> BY_PLACE =
            Comparator.comparingInt(group -> group.place() == 0 ? Integer.MAX_VALUE : group.place());

    private final PairingRequest request;
    private final Solution solution;

    private RoundMaker(PairingRequest request, Solution solution) {
        this.request = request;
        this.solution = solution;
    }

    /** All rounds of the class, those already played first. */
    static List<Round> rounds(PairingRequest request, Solution solution) {
        RoundMaker maker = new RoundMaker(request, solution);
        List<Round> rounds = new ArrayList<>(request.played());
        for (int round = 0; round < request.open().size(); round++) {
            rounds.add(maker.round(round, rounds));
        }
        return rounds;
    }

    /**
     * A round before those who are left are put to work.
     *
     * @param groups pairs, and those who work with a helper
     * @param left those for whom there is no partner
     */
    record Base(List<Group> groups, List<String> left) {}

    /** The rounds that were planned, each without those who are left. */
    static List<Base> bases(PairingRequest request, Solution solution) {
        RoundMaker maker = new RoundMaker(request, solution);
        return IntStream.range(0, request.open().size()).mapToObj(maker::base).toList();
    }

    private Base base(int number) {
        List<Group> groups = new ArrayList<>();
        List<String> left = new ArrayList<>();
        for (int student = 0; student < request.students().size(); student++) {
            int mate = solution.table().mate(number, student);
            if (mate == solution.problem().blank()) {
                left.add(name(student));
            } else if (mate > student) {
                groups.add(group(student, mate).at(walked(number, student)));
            }
        }
        return new Base(groups, left);
    }

    private Round round(int number, List<Round> before) {
        Base base = base(number);
        List<Group> all = new LeftOvers(request, before).placed(base.groups(), base.left());
        List<Group> placed = new ArrayList<>(placed(number, all, before));
        request.soloists().forEach(name -> placed.add(new Group(Group.Kind.SOLO, 0, List.of(name), Optional.empty())));
        placed.sort(BY_PLACE);
        return new Round(before.size() + 1, request.open().get(number), placed);
    }

    private String name(int student) {
        return request.students().get(student).name();
    }

    private Group group(int student, int mate) {
        if (solution.problem().isStudent(mate)) {
            return new Group(Group.Kind.PAIR, 0, List.of(name(student), name(mate)), Optional.empty());
        }
        String helper = request.helpers().get(mate - request.students().size());
        return new Group(Group.Kind.HELPED, 0, List.of(name(student)), Optional.of(helper));
    }

    private int walked(int round, int student) {
        return solution.walk().map(walk -> walk.place(round, student) + 1).orElse(0);
    }

    private List<Group> placed(int round, List<Group> groups, List<Round> before) {
        if (solution.walk().isPresent()) {
            return groups.stream().map(group -> walkedPair(round, group)).toList();
        }
        return before.isEmpty() ? Places.first(groups) : Places.after(before.get(before.size() - 1), groups);
    }

    /** Two new ones who work together meet where the first of them stands. */
    private Group walkedPair(int round, Group group) {
        if (group.kind() != Group.Kind.BOTH_NEW) {
            return group;
        }
        int first = 0;
        while (!name(first).equals(group.people().get(0))) {
            first++;
        }
        return group.at(walked(round, first));
    }
}
