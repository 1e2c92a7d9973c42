package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.rounds.LongestRun;
import org.drillwright.plan.walk.Obstacle;
import org.drillwright.plan.walk.Walked;
import org.drillwright.plan.walk.Walks;
import org.drillwright.wording.Message;

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
    private final Walks walks;
    private final Walked walked;
    private final PairingPlan plan;

    private Pairing(PairingRequest request) {
        this.request = request;
        this.walks = walks(request, mayWalk(request) && request.movement() != Movement.FREE);
        this.walked = request.movement() == Movement.WALK
                ? walks.usual()
                : formings(request.movement()).stream()
                        .boxed()
                        .flatMap(number -> walks.nearest(number).stream())
                        .findFirst()
                        .orElseGet(walks::free);
        this.plan = planned();
    }

    /** In training everybody is to be near in skill, which no walk heeds. */
    private static boolean mayWalk(PairingRequest request) {
        return request.mode() == Mode.LEARNING;
    }

    private static Walks walks(PairingRequest request, boolean walked) {
        return new Walks(ProblemMaker.of(request), walked ? request.open() : List.of());
    }

    private static OptionalInt formings(Movement movement) {
        return switch (movement) {
            case ONE -> OptionalInt.of(1);
            case TWO -> OptionalInt.of(2);
            case WALK, FREE -> OptionalInt.empty();
        };
    }

    public static Pairing of(PairingRequest request) {
        return new Pairing(request);
    }

    /**
     * The most rounds of a drill for which everybody can have so many different partners, those kept apart counted out.
     *
     * @param hoped as many as there are if nobody is kept apart, 1 or more
     */
    public static int longestRun(PairingRequest request, String drill, int hoped) {
        return LongestRun.of(ProblemMaker.of(request.on(List.of(drill))), hoped);
    }

    private PairingPlan planned() {
        var rounds = RoundMaker.rounds(request, walked);
        Facts facts = new Facts(request, walked, rounds);
        return new PairingPlan(
                rounds,
                request.played().size(),
                walked.solution().method(),
                Optional.of(Claim.of(request, walked, rounds)),
                RoundMaker.walks(request, walked),
                new Changeovers(request, walked).of(rounds),
                facts.shortages(),
                facts.watched(),
                facts.sentences());
    }

    public PairingPlan plan() {
        return plan;
    }

    /** The ways to change over and their prices, the fewest formings first; none where there is nothing to choose. */
    public List<WalkChoice> choices() {
        List<WalkChoice> choices = new ArrayList<>();
        Walks all = request.movement() == Movement.FREE ? walks(request, mayWalk(request)) : walks;
        if (request.open().size() < 2 || all.most() == 0) {
            return choices;
        }
        int usual = all.usual().formings().size();
        for (int formings = all.fewest(); formings <= Math.max(2, Math.max(usual, all.fewest())); formings++) {
            all.of(formings).ifPresent(way -> choices.add(choice(way, usual)));
        }
        choices.add(choice(all.free(), usual));
        return choices;
    }

    private WalkChoice choice(Walked way, int usual) {
        List<String> read = way.formings().isEmpty()
                ? List.of()
                : way.obstacles().stream().map(this::drill).distinct().toList();
        return Claim.choice(
                request,
                way,
                RoundMaker.rounds(request, way),
                read,
                usual == way.formings().size());
    }

    private String drill(Obstacle obstacle) {
        return request.open().get(obstacle.from());
    }

    /** Why two do or don't work together, in sentences. */
    public List<Message> why(String one, String other) {
        return new Why(request, walked.solution(), plan).of(one, other);
    }
}
