package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.rounds.Aim;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Solution;

/** What an instructor should know of a plan, in sentences that can be counted after. */
final class Facts {

    private final PairingRequest request;
    private final Solution solution;
    private final List<Round> rounds;

    Facts(PairingRequest request, Solution solution, List<Round> rounds) {
        this.request = request;
        this.solution = solution;
        this.rounds = rounds;
    }

    /** One for each drill of the rounds planned for which not everyone has a partner. */
    List<Shortage> shortages() {
        Map<String, Shortage> shortages = new LinkedHashMap<>();
        for (int round = 0; round < request.open().size(); round++) {
            Extras extras = solution.extras().get(round);
            String drill = request.open().get(round);
            int left = request.students().size() - 2 * extras.pairs();
            if (left > 0) {
                shortages.putIfAbsent(drill, shortage(drill, extras, left));
            }
        }
        return List.copyOf(shortages.values());
    }

    private Shortage shortage(String drill, Extras extras, int left) {
        int students = request.students().size();
        int fresh = request.mode() == Mode.TRAINING
                ? 0
                : (int) request.students().stream()
                        .filter(student -> request.isNew(student.name(), drill))
                        .count();
        return new Shortage(
                drill, fresh, students - fresh, extras.pairs(), left, extras.helpers(), left == students % 2);
    }

    List<String> sentences() {
        List<String> facts = new ArrayList<>();
        for (Shortage shortage : shortages()) {
            facts.add(shortage.drill() + ": " + shortage.sentence());
            shortage.choices(request.helpers().size()).forEach(choice -> facts.add("Choice " + choice));
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

    private void repeats(List<String> facts) {
        long repeats = solution.cost().of(Aim.REPEATS);
        long least = solution.bound().of(Aim.REPEATS);
        if (repeats > 0) {
            facts.add("Some meet again today, as there are more rounds than permitted partners (repeats count "
                    + repeats + "; below " + least + " it can't be).");
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
