package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** The two turns of a count say the same of the blades. */
public final class TurnsAtOdds extends RefusalRule {

    public TurnsAtOdds() {
        super(new RuleText(TurnsAtOdds.class, "turns-at-odds", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.WordsDisagree words)) {
            return Sentence.none();
        }
        boolean both = words.theirs().engaged().equals(words.own().engaged());
        return Sentence.error(
                Message.of(
                        TurnsAtOdds.class,
                        "turns-at-odds.what",
                        blades(words.theirs(), both),
                        blades(words.own(), both),
                        fault.where()),
                fault.ways()
                        .or(
                                Message.of(TurnsAtOdds.class, "turns-at-odds.write", blades(words.theirs(), true)),
                                Amendment.each(action -> stated(action, words.theirs())))
                        .sentence());
    }

    private static Message blades(Stance stance, boolean naming) {
        if (!stance.engaged().equals(Optional.of(true))) {
            return Message.of(TurnsAtOdds.class, "turns-at-odds.apart");
        }
        return stance.engagement()
                .filter(position -> naming)
                .map(position -> Message.of(TurnsAtOdds.class, "turns-at-odds.engaged-in", Terms.of(position)))
                .orElseGet(() -> Message.of(TurnsAtOdds.class, "turns-at-odds.engaged"));
    }

    /** The same, with what the other's turn says of the blades. */
    private static Action stated(Action action, Stance other) {
        if (action instanceof Action.OnGuard guard) {
            return new Action.OnGuard(guard.stance().touchingAs(other));
        }
        if (action instanceof Action.Recover recover) {
            return new Action.Recover(recover.way(), recover.stance().touchingAs(other));
        }
        if (action instanceof Action.Answer answer) {
            return new Action.Answer(answer.reply(), answer.stance().touchingAs(other));
        }
        return action instanceof Action.State state
                ? new Action.State(state.measure(), state.stance().touchingAs(other))
                : action;
    }
}
