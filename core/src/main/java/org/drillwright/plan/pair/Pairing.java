package org.drillwright.plan.pair;

import java.util.List;
import java.util.Optional;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.rounds.LongestRun;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.rounds.Solver;

/**
 * Plans rounds of partners. The same request gives the same plan.
 *
 * <pre>{@code
 * Pairing pairing = Pairing.of(PairingRequest.of(school, roster, brief, history, drillOfEachRound));
 * pairing.plan().rounds().forEach(round -> show(round));
 * pairing.why("Ash", "Bo").forEach(sentence -> show(sentence));
 * }</pre>
 */
public final class Pairing {

    private final PairingRequest request;
    private final Solution solution;
    private final PairingPlan plan;

    private Pairing(PairingRequest request, Solution solution) {
        this.request = request;
        this.solution = solution;
        this.plan = planned();
    }

    public static Pairing of(PairingRequest request) {
        boolean walk = request.movement() == Movement.WALK
                && request.mode() == Mode.LEARNING
                && request.played().isEmpty();
        return new Pairing(request, Solver.solve(ProblemMaker.of(request), walk));
    }

    /**
     * In how many rounds of a drill nobody need meet twice, those kept apart counted out.
     *
     * @param hoped as many as there are if nobody is kept apart, 1 or more
     */
    public static int longestRun(PairingRequest request, String drill, int hoped) {
        return LongestRun.of(ProblemMaker.of(request.on(List.of(drill))), hoped);
    }

    private PairingPlan planned() {
        var rounds = RoundMaker.rounds(request, solution);
        Facts facts = new Facts(request, solution, rounds);
        Method method = solution.method();
        return new PairingPlan(
                rounds,
                request.played().size(),
                method,
                Optional.of(Claim.of(request, solution, rounds)),
                WalkWords.of(request, solution),
                facts.shortages(),
                facts.watched(),
                facts.sentences());
    }

    public PairingPlan plan() {
        return plan;
    }

    /** Why two do or don't work together, in sentences. */
    public List<String> why(String one, String other) {
        return new Why(request, solution, plan).of(one, other);
    }
}
