package org.drillwright.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Telling;
import org.drillwright.notation.Utterance;

/**
 * A drill told as a handbook tells it, of both: 'he lunges', 'the partner parries quarte'; or to one of the two: 'your
 * partner lunges', 'you parry quarte'. Nobody writes of one side throughout only what the other does, so that in such a drill
 * he or your partner is everywhere the one whose turn it is. Or it is told by one of the two: 'my partner lunges', 'I parry
 * quarte'; there the one told of is whose turn it is on that count, whatever stands on the others.
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
        for (Side side : Side.values()) {
            if (isToldAsTheOther(side)) {
                for (int step = 0; step < script.steps().size(); step++) {
                    Optional<Utterance> own = asOneself(script.turn(step, side));
                    told = own.isPresent() ? told.with(step, side, own.get()) : told;
                }
            }
        }
        if (isToldSo()) {
            for (int step = 0; step < script.steps().size(); step++) {
                for (Side side : Side.values()) {
                    Optional<Utterance> own = script.turn(step, side).ofOneself();
                    told = own.isPresent() ? told.with(step, side, own.get()) : told;
                }
            }
        }
        return asTheTellerSees(told);
    }

    /** Beside a turn that is told in the first person or by name, the one told of is the one whose turn it is. */
    private static Script asTheTellerSees(Script script) {
        Script told = script;
        for (Side side : Side.values()) {
            boolean mayBeToldOf = !isTeller(script, side);
            for (int step = 0; step < script.steps().size(); step++) {
                Utterance turn = told.turn(step, side);
                Telling partners = script.turn(step, side.other()).telling();
                boolean byPartner = partners == Telling.BY_NAME || (partners == Telling.FIRST_PERSON && mayBeToldOf);
                if (turn.telling() == Telling.OF_ANOTHER && byPartner) {
                    told = told.with(step, side, asOneself(turn).orElseGet(turn::byNobodyKnown));
                }
            }
        }
        return told;
    }

    /** Whether a side says 'I' of itself anywhere. */
    private static boolean isTeller(Script script, Side side) {
        return IntStream.range(0, script.steps().size())
                .anyMatch(step -> script.turn(step, side).telling() == Telling.FIRST_PERSON);
    }

    /**
     * Whether a turn tells only what another does, and that one's own turn does not say so: then it is not known whose deed
     * it is, and to play nothing for it would be to pass it over.
     */
    static boolean leavesOpenWhose(Script script, int step, Side side) {
        Utterance turn = script.turn(step, side);
        List<Action> own = script.turn(step, side.other()).actions();
        return turn.telling() == Telling.OF_ANOTHER
                && asOneself(turn).stream()
                        .flatMap(deeds -> deeds.actions().stream())
                        .anyMatch(deed -> own.stream().noneMatch(other -> SameDeed.mayBe(deed, other)));
    }

    /** Whether all that a side does is told as if of the other: several of its turns tell of 'your partner' or of him, and none of itself. */
    private boolean isToldAsTheOther(Side side) {
        int told = 0;
        for (int step = 0; step < script.steps().size(); step++) {
            Utterance turn = script.turn(step, side);
            boolean ofPartner = asOneself(turn).isPresent();
            if (!ofPartner && turn.clauses().stream().anyMatch(ToldOfBoth::isDone)) {
                return false;
            }
            told += ofPartner ? 1 : 0;
        }
        return told > 1;
    }

    private static Optional<Utterance> asOneself(Utterance turn) {
        return turn.ofYourPartner().or(turn::ofOneself);
    }

    private static boolean isDone(Clause clause) {
        return !(clause.action() instanceof Action.Aside || clause.action() instanceof Action.Unread);
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
