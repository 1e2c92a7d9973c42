package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.rounds.Problem;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.walk.Forming;
import org.drillwright.plan.walk.Walked;

/** Turns a table of numbers back into rounds of people at places. */
final class RoundMaker {

    private static final Comparator<Group> BY_PLACE =
            Comparator.comparingInt(group -> group.place() == 0 ? Integer.MAX_VALUE : group.place());

    private final PairingRequest request;
    private final Walked walked;
    private final Solution solution;

    private RoundMaker(PairingRequest request, Walked walked) {
        this.request = request;
        this.walked = walked;
        this.solution = walked.solution();
    }

    /** All rounds of the class, those already played first. */
    static List<Round> rounds(PairingRequest request, Walked walked) {
        RoundMaker maker = new RoundMaker(request, walked);
        List<Round> rounds = new ArrayList<>(request.played());
        for (int round = 0; round < request.open().size(); round++) {
            rounds.add(maker.round(round, rounds));
        }
        return Leads.of(request, walks(request, walked), new Eyes(request).on(rounds));
    }

    /** The two lines of a class, by names. */
    static List<Walk> walks(PairingRequest request, Walked walked) {
        int before = request.played().size();
        return walked.formings().stream()
                .filter(Forming::isLines)
                .map(forming -> new Walk(
                        before + forming.from() + 1,
                        before + forming.to(),
                        names(request, forming.stays()),
                        names(request, forming.moves())))
                .toList();
    }

    private static List<String> names(PairingRequest request, List<Integer> line) {
        List<String> all = new ArrayList<>();
        request.students().forEach(student -> all.add(student.name()));
        all.addAll(request.helpers());
        all.add(Walk.REST);
        return line.stream().map(all::get).toList();
    }

    private Round round(int number, List<Round> before) {
        List<Group> placed = new ArrayList<>(placed(number, groups(number), before));
        request.soloists().forEach(name -> placed.add(Group.solo(name)));
        placed.sort(BY_PLACE);
        return new Round(before.size() + 1, request.open().get(number), placed);
    }

    /** Those who join a pair come last, when all pairs are there. */
    private List<Group> groups(int number) {
        Problem problem = solution.problem();
        List<Group> groups = new ArrayList<>();
        for (int student = 0; student < request.students().size(); student++) {
            int mate = solution.table().mate(number, student);
            if (mate == problem.blank()) {
                groups.add(Group.solo(name(student)));
            } else if (mate > student && mate < problem.blank()) {
                groups.add(group(number, student, mate).at(walked(number, student)));
            }
        }
        for (int student = 0; student < request.students().size(); student++) {
            int middle = problem.joined(solution.table().mate(number, student));
            if (middle >= 0) {
                groups.set(at(middle, groups), joined(number, student, middle, groups));
            }
        }
        return groups;
    }

    private int at(int student, List<Group> groups) {
        return IntStream.range(0, groups.size())
                .filter(at -> groups.get(at).holds(name(student)))
                .findFirst()
                .orElseThrow();
    }

    private Group joined(int number, int third, int middle, List<Group> groups) {
        Group group = groups.get(at(middle, groups));
        boolean alike = Stream.concat(group.people().stream(), Stream.of(name(third)))
                        .map(name -> isNew(name, number))
                        .distinct()
                        .count()
                == 1;
        return group.joinedBy(name(third), name(middle), alike);
    }

    private boolean isNew(String name, int number) {
        return request.mode() == Mode.LEARNING
                && request.isNew(name, request.open().get(number));
    }

    private String name(int student) {
        return request.students().get(student).name();
    }

    private Group group(int number, int student, int mate) {
        if (solution.problem().isStudent(mate)) {
            List<String> two = List.of(name(student), name(mate));
            boolean bothNew = two.stream().allMatch(name -> isNew(name, number));
            return new Group(bothNew ? Group.Kind.WATCHED : Group.Kind.PAIR, 0, two, Optional.empty());
        }
        String helper = request.helpers().get(mate - request.students().size());
        return new Group(Group.Kind.HELPED, 0, List.of(name(student)), Optional.of(helper));
    }

    private int walked(int round, int student) {
        return walked.at(round).map(forming -> forming.post(round, student) + 1).orElse(0);
    }

    private List<Group> placed(int number, List<Group> groups, List<Round> before) {
        if (walked.at(number).isPresent()) {
            return groups;
        }
        return before.isEmpty() ? FloorPlaces.first(groups) : FloorPlaces.after(before.get(before.size() - 1), groups);
    }
}
