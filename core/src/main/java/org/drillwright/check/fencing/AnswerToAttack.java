package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Closers;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Line;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** Each attack is met: parried, evaded, or received on purpose. */
public final class AnswerToAttack extends RefusalRule {

    public AnswerToAttack() {
        super(new RuleText(
                "answer-to-attack",
                Severity.ERROR,
                true,
                "Each attack is parried, evaded, or received on purpose in words such as 'take the touch', on the same count; who"
                        + " is stopped in an attack may take the touch on the next one. Nobody takes a touch that does"
                        + " not come.",
                "Whoever does not know that a touch is coming is hit unprepared.",
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Bend the arm.
                        #             ^^^^^^^^^^^^^
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                          - leader: Hold on guard.
                            follower: Take the touch.
                        #             ^^^^^^^^^^^^^^
                            distance: lunge
                        """,
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Take the touch.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.Unanswered unanswered) {
            String line = unanswered
                    .line()
                    .value()
                    .map(one -> " in " + Sentence.the(one))
                    .orElse("");
            String closers = closers(fault, subject, unanswered.line());
            boolean parry = !closers.isEmpty() || !unanswered.line().isKnown();
            return Sentence.error(
                    "The attack" + line + " is not met by the " + fault.by().word() + ".",
                    ((parry ? "Parry it, evade it" : "Evade it") + ", or write 'take the touch'. " + closers).strip());
        }
        if (refusal instanceof Refusal.NotOwnedTo hit) {
            String comes = hit.pastTheParry() ? "The attack comes past the parry" : "A stop hit arrives";
            return Sentence.warning(
                    comes + ", and the " + fault.by().word() + " does not acknowledge it.",
                    "If it is meant to land, write 'acknowledge the touch' here or on the next count.");
        }
        if (refusal instanceof Refusal.RetreatTooShort retreat) {
            Fact<Line> line =
                    fault.before().attackOn(fault.by()).map(Attack::line).orElseGet(() -> Fact.unknown("the attack"));
            boolean parry = !line.isKnown() || !closers(fault, subject, line).isEmpty();
            return Sentence.error(
                    "This retreat does not get out of reach: the measure after it is "
                            + retreat.measure().words() + ".",
                    waysAway(retreat.more(), fault.attempt().escapes(fault.by(), retreat.more()), parry));
        }
        if (refusal instanceof Refusal.HoldUnderAttack) {
            return Sentence.warning(
                    "An attack is under way, and the " + fault.by().word() + " only holds.",
                    "If the touch is taken on purpose, say so: 'take the touch'.");
        }
        if (refusal instanceof Refusal.HandDeceived) {
            return Sentence.warning(
                    "The riposte goes round the " + fault.by().word() + "'s hand and arrives.",
                    "If the touch is taken on purpose, say so: 'take the touch'.");
        }
        if (refusal instanceof Refusal.NothingToTake) {
            return Sentence.error(
                    "No touch comes at the " + fault.by().word() + " here or on the count before.",
                    "Write the touch into the other's turn, or another action here.");
        }
        return Sentence.none();
    }

    private static String waysAway(int steps, boolean away, boolean parry) {
        String back = steps == 1 ? "go back one step more" : "go back " + steps + " steps more";
        return Sentence.capital(away ? back + (parry ? ", or parry" : "") : parry ? "parry" : "", ".");
    }

    private static String closers(Fault fault, Subject subject, Fact<Line> line) {
        return line.value()
                .map(one -> Closers.sentence(subject.replay().setting(), fault, one))
                .orElse("");
    }
}
