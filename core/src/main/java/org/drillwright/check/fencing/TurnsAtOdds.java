package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** The two turns of a count say the same of the blades. */
public final class TurnsAtOdds extends RefusalRule {

    public TurnsAtOdds() {
        super(new RuleText(
                "turns-at-odds",
                Severity.ERROR,
                false,
                "Where both turns of a count say how the blades end up, they agree: touching in the same line"
                        + " for both, or apart for both.",
                "Blades touch for both or for neither (L'Abbat 1734, ch. XXII), and two fencers told different"
                        + " things wait for each other.",
                """
                        steps:
                          - leader: Come on guard in sixte, blades engaged.
                            follower: Come on guard in sixte, blades apart.
                        #             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            distance: lunge
                          - leader: Return to guard in sixte, blades apart.
                            follower: Return to guard in sixte, blades apart.
                            distance: lunge
                        """,
                """
                        steps:
                          - leader: Come on guard in sixte, blades engaged.
                            follower: Come on guard in sixte, blades engaged.
                            distance: lunge
                          - leader: Return to guard in sixte, blades apart.
                            follower: Return to guard in sixte, blades apart.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.WordsDisagree words)) {
            return Sentence.none();
        }
        boolean both = words.theirs().engaged().equals(words.own().engaged());
        return Sentence.error(
                "The partner's turn has " + blades(words.theirs(), both) + " on " + fault.where() + ", but this"
                        + " turn has "
                        + blades(words.own(), both) + ".",
                fault.ways()
                        .or(
                                "write here as well: " + blades(words.theirs(), true),
                                Change.each(action -> stated(action, words.theirs())))
                        .sentence());
    }

    private static String blades(Stance stance, boolean naming) {
        boolean touch = stance.engaged().equals(Optional.of(true));
        String where = stance.engagement()
                .filter(position -> naming)
                .map(position -> " in " + position.word())
                .orElse("");
        return touch ? "the blades engaged" + where : "the blades apart";
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
