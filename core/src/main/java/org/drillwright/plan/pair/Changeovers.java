package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.walk.Forming;
import org.drillwright.plan.walk.Obstacle;
import org.drillwright.plan.walk.Walked;

/** Finds how people change over. */
final class Changeovers {

    private final PairingRequest request;
    private final Walked walked;

    Changeovers(PairingRequest request, Walked walked) {
        this.request = request;
        this.walked = walked;
    }

    /** @param rounds all of them, those already played first */
    List<Changeover> of(List<Round> rounds) {
        if (request.open().size() < 2) {
            return List.of();
        }
        if (walked.solution().method() == Method.RING) {
            return ring(walked.formings().get(0));
        }
        List<Changeover> changes = new ArrayList<>();
        walked.obstacles().forEach(obstacle -> changes.add(unformed(obstacle)));
        changes.addAll(of(rounds, RoundMaker.walks(request, walked)));
        if (walked.formings().isEmpty()
                && walked.obstacles().size()
                        < request.open().stream().distinct().count()) {
            changes.add(new Changeover.Read(request.movement() == Movement.WALK && walked.isBeaten()));
        }
        return changes;
    }

    private List<Changeover> ring(Forming ring) {
        List<String> still = ring.stays().stream()
                .map(student -> request.students().get(student).name())
                .toList();
        return List.of(new Changeover.Still(still), new Changeover.Ring());
    }

    /** Only that drill is read from the sheet. */
    private Changeover unformed(Obstacle obstacle) {
        int together = obstacle.together().size();
        return new Changeover.Unformed(
                request.open().get(obstacle.from()),
                obstacle.why(),
                together,
                request.students().size() - together,
                obstacle.helpers());
    }

    /** How two lines change over, forming by forming; the rule comes last. */
    static List<Changeover> of(List<Round> rounds, List<Walk> walks) {
        List<Changeover> changes = new ArrayList<>();
        for (int at = 0; at < walks.size(); at++) {
            Walk walk = walks.get(at);
            if (at > 0) {
                Walk before = walks.get(at - 1);
                changes.add(new Changeover.Crossing(before.to(), Walk.changing(before, walk)));
            }
            boolean isAll = walks.size() == 1 && walk.to() - walk.from() + 1 == rounds.size();
            changes.add(new Changeover.LineA(walk, isAll));
            changes.add(new Changeover.LineB(walk));
        }
        if (walks.stream().anyMatch(Walk::hasRest)) {
            changes.add(new Changeover.Unpaired(joins(rounds, walks)));
        }
        if (!walks.isEmpty()) {
            changes.add(new Changeover.PostUp(isAlways(rounds, walks)));
        }
        return changes;
    }

    private static boolean isAlways(List<Round> rounds, List<Walk> walks) {
        return walks.stream()
                .anyMatch(walk -> IntStream.range(walk.from(), walk.to())
                        .anyMatch(round -> !rounds.get(round)
                                .drill()
                                .equals(rounds.get(round - 1).drill())));
    }

    /** Whoever stands before nobody joins a pair in a three, or rests. */
    private static boolean joins(List<Round> rounds, List<Walk> walks) {
        return rounds.stream()
                .filter(round -> walks.stream().anyMatch(walk -> walk.holds(round.number())))
                .flatMap(round -> round.groups().stream())
                .anyMatch(group -> group.kind() == Group.Kind.THREE);
    }
}
