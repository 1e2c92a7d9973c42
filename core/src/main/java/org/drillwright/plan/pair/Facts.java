package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.rounds.Aim;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.record.History;

/** What an instructor should know of a plan, in sentences that can be counted after. */
final class Facts {

    private final PairingRequest request;
    private final Solution solution;
    private final List<Round> rounds;
    private final List<Shortage> shortages;

    Facts(PairingRequest request, Solution solution, List<Round> rounds) {
        this.request = request;
        this.solution = solution;
        this.rounds = rounds;
        this.shortages = found();
    }

    /** One for each drill of the rounds planned for which not everyone has a partner. */
    List<Shortage> shortages() {
        return shortages;
    }

    private List<Shortage> found() {
        Map<String, Shortage> found = new LinkedHashMap<>();
        List<RoundMaker.Base> bases = RoundMaker.bases(request, solution);
        for (int round = 0; round < bases.size(); round++) {
            String drill = request.open().get(round);
            RoundMaker.Base base = bases.get(round);
            int left = base.left().size() + helped(base.groups());
            if (left > 0 && !found.containsKey(drill)) {
                List<Round> before = rounds.subList(0, request.played().size() + round);
                found.put(drill, shortage(drill, base, left, before));
            }
        }
        return List.copyOf(found.values());
    }

    private static int helped(List<Group> groups) {
        return count(groups, group -> group.kind() == Group.Kind.HELPED);
    }

    private Shortage shortage(String drill, RoundMaker.Base base, int left, List<Round> before) {
        int students = request.students().size();
        int fresh = request.mode() == Mode.TRAINING
                ? 0
                : (int) request.students().stream()
                        .filter(student -> request.isNew(student.name(), drill))
                        .count();
        return new Shortage(
                drill,
                fresh,
                students - fresh,
                (students - left) / 2,
                left,
                helped(base.groups()),
                helpers(base.groups()),
                left == students % 2,
                way(LeftOver.THREES, Group.Kind.THREE, base, before),
                way(LeftOver.BOTH_NEW, Group.Kind.BOTH_NEW, base, before));
    }

    private String helpers(List<Group> groups) {
        return request.helpers().stream()
                .filter(name -> groups.stream()
                        .anyMatch(group -> group.helper().filter(name::equals).isPresent()))
                .map(name -> name.equals(History.INSTRUCTOR) ? "the instructor" : name)
                .collect(Collectors.joining(" or "));
    }

    /** What comes of a choice is seen by making it. */
    private Shortage.Way way(LeftOver choice, Group.Kind kind, RoundMaker.Base base, List<Round> before) {
        List<Group> groups = new LeftOvers(request.with(choice), before).placed(base.groups(), base.left());
        return new Shortage.Way(
                count(groups, group -> group.kind() == kind),
                count(groups, group -> group.kind() == kind && group.helper().isPresent()),
                count(groups, group -> group.kind() == Group.Kind.HELPED),
                count(groups, group -> group.kind() == Group.Kind.SOLO));
    }

    private static int count(List<Group> groups, Predicate<Group> wanted) {
        return (int) groups.stream().filter(wanted).count();
    }

    List<String> sentences() {
        List<String> facts = new ArrayList<>();
        for (Shortage shortage : shortages) {
            facts.add(shortage.drill() + ": " + shortage.sentence());
            shortage.choices().forEach(choice -> facts.add("Choice " + choice));
        }
        fairness(facts);
        bothNew(facts);
        repeats(facts);
        skills(facts);
        return facts;
    }

    private void fairness(List<String> facts) {
        int planned = request.open().size();
        if (solution.method() == Method.BLANK_RING && !rounds.isEmpty()) {
            Extras extras = solution.extras().get(0);
            int fresh = extras.pairs() + extras.helpers() + extras.blanks();
            if (planned == fresh) {
                facts.add("In " + planned + " rounds each who is new works once with each who knows the drill, and has "
                        + extras.blanks() + " turns without one of them.");
            }
        }
    }

    private void bothNew(List<String> facts) {
        for (Round round : rounds) {
            for (Group group : round.groups()) {
                if (group.kind() == Group.Kind.BOTH_NEW) {
                    facts.add("Round " + round.number() + ": " + String.join(" and ", group.people())
                            + " are both new to " + round.drill() + "; no one who knows it is left for them.");
                }
            }
        }
    }

    /** Counted in the plan; whether it must be so is said only if it is known. */
    private void repeats(List<String> facts) {
        Map<Set<String>, Integer> met = new LinkedHashMap<>();
        rounds.forEach(round -> round.groups().forEach(group -> meet(group.people(), met)));
        long again = met.values().stream().filter(times -> times > 1).count();
        long least = solution.bound().of(Aim.REPEATS);
        if (solution.cost().of(Aim.REPEATS) > 0) {
            facts.add((again == 1 ? "One pair meets" : again + " pairs meet") + " more than once today"
                    + (least == 0
                            ? "; whether it could be fewer isn't known."
                            : ", as there are more rounds than permitted partners"
                                    + (least == solution.cost().of(Aim.REPEATS) ? "; it can't be less often." : ".")));
        }
    }

    private static void meet(List<String> people, Map<Set<String>, Integer> met) {
        for (int one = 0; one < people.size(); one++) {
            for (String other : people.subList(one + 1, people.size())) {
                met.merge(Set.of(people.get(one), other), 1, Integer::sum);
            }
        }
    }

    private void skills(List<String> facts) {
        boolean numbers =
                request.students().stream().allMatch(student -> student.skill().isPresent());
        if (request.mode() == Mode.TRAINING && !numbers) {
            facts.add("Not everyone has a skill number, so levels were compared instead.");
        }
    }
}
