package org.drillwright.check;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Utterance;

/**
 * A drill told as a handbook tells it, of both: 'he lunges', 'the partner parries quarte'. Nobody writes of each only what
 * the other does, so that in such a drill he is everywhere the one whose turn it is.
 */
final class ToldOfBoth {

    private final Script script;

    private ToldOfBoth(Script script) {
        this.script = script;
    }

    /** The script with those turns read so, if it is told of both. */
    static Script read(Script script) {
        return new ToldOfBoth(script).read();
    }

    private Script read() {
        Script told = script;
        if (isToldSo()) {
            for (int step = 0; step < script.steps().size(); step++) {
                for (Side side : Side.values()) {
                    Optional<Utterance> own = script.turn(step, side).ofOneself();
                    told = own.isPresent() ? told.with(step, side, own.get()) : told;
                }
            }
        }
        return told;
    }

    private boolean isToldSo() {
        for (int step = 0; step < script.steps().size(); step++) {
            Utterance leader = script.turn(step, Side.LEADER);
            Utterance follower = script.turn(step, Side.FOLLOWER);
            boolean open =
                    leader.ofOneself().isPresent() || follower.ofOneself().isPresent();
            if (open && isOfSomebody(leader) && isOfSomebody(follower)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a turn names the one who acts in it. */
    private static boolean isOfSomebody(Utterance turn) {
        return turn.ofOneself().isPresent()
                || (!turn.clauses().isEmpty()
                        && turn.clauses().stream()
                                .allMatch(clause -> clause.subject().isPresent()));
    }
}
