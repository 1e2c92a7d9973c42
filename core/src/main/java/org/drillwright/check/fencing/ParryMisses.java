package org.drillwright.check.fencing;

import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.check.Closers;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.Ways;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Setting;
import org.drillwright.source.Severity;

/** A parry ends closing the line that is attacked. */
public final class ParryMisses extends RefusalRule {

    public ParryMisses() {
        super(new RuleText(
                "parry-misses",
                Severity.ERROR,
                false,
                "A parry ends in a position that closes the line of the attack; a circular parry starts and"
                        + " ends in the same position and meets an attack in the other line at that height. No"
                        + " high parry meets an attack to the foot, and no low parry one to the chest.",
                "A parry that closes another line lets the point in (Technical Rules t.14; Warford 1884, p."
                        + " 10-17).",
                """
                        weapon: epee
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry octave.
                        #             ^^^^^^^^^^^^
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                          - leader: Thrust to the foot with a lunge.
                            follower: Parry quarte.
                        #             ^^^^^^^^^^^^
                            distance: lunge
                            safety: Stop the point on the shoe.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """,
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Circular parry of sixte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                          - leader: Thrust to the low outside line with a lunge.
                            follower: Parry octave.
                            distance: lunge
                            safety: Stop the point on the jacket.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        Setting setting = subject.replay().setting();
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.ParryMisses miss) {
            String what = closes(setting, miss.position()) + ", but the attack arrives in "
                    + Sentence.the(miss.attacked()) + ".";
            WayOut out = Closers.sentence(setting, fault, miss.attacked());
            return miss.firm()
                    ? Sentence.error(what, out)
                    : Sentence.warning(what + " Schools differ about this position.", out);
        }
        if (refusal instanceof Refusal.CircleElsewhere circle) {
            return Sentence.error(
                    "A circular parry of " + circle.position().word() + " starts in "
                            + circle.position().word() + ", but the hand is in "
                            + circle.from().word() + ".",
                    Closers.sentence(setting, fault, circle.attacked()));
        }
        if (refusal instanceof Refusal.CircleNotNeeded circle) {
            return Sentence.error(
                    "The attack arrives in " + Sentence.the(circle.attacked()) + ", which "
                            + circle.position().word()
                            + " closes without a circle; a circular parry meets an attack in the"
                            + " other line of the same height.",
                    fault.ways()
                            .or("leave out the circle", Change.parriedAs(ParryKind.UNSTATED))
                            .sentence()
                            .and(Closers.sentence(setting, fault, circle.attacked())));
        }
        if (refusal instanceof Refusal.ParryAtOtherHeight other) {
            boolean low = other.attacked() == Height.LOW;
            return Sentence.error(
                    closes(setting, other.position()) + ", but the attack arrives " + (low ? "low." : "high."),
                    atHeight(setting, fault, other.attacked()));
        }
        return sayWarning(setting, fault);
    }

    /** Parries at the height of the attack, or an arm that is hit while the target is drawn away. */
    private static WayOut atHeight(Setting setting, Fault fault, Height height) {
        Ways ways = fault.ways();
        for (Position position : Position.values()) {
            boolean there = setting.lineOf(position)
                    .flatMap(Line::height)
                    .filter(height::equals)
                    .isPresent();
            if (there && Closers.isUsual(setting, position)) {
                ways.or(
                        "parry " + position.word(),
                        Change.instead(
                                new Action.Parry(Optional.of(position), ParryKind.UNSTATED, Aim.UNSTATED, false)));
            }
        }
        Aim arm = new Aim(Optional.empty(), Optional.empty(), Optional.of(Target.FOREARM));
        Action stop = new Action.Strike(Action.Role.STOP, Action.Path.UNSTATED, arm, false, false, false, false);
        return ways.or(
                        "draw the target away and hit the arm",
                        Change.instead(new Action.Evade(Action.Displacement.UNSTATED), stop))
                .sentence();
    }

    private static Optional<Sentence> sayWarning(Setting setting, Fault fault) {
        Refusal refusal = fault.refusal();
        if (refusal instanceof Refusal.CircleWanted circle) {
            return Sentence.warning(
                    "The hand is in " + circle.position().word() + " already, and the attack arrives in "
                            + Sentence.the(circle.attacked()) + ": only the circular parry meets it from there.",
                    fault.ways()
                            .or(
                                    "write 'circular parry of "
                                            + circle.position().word() + "'",
                                    Change.parriedAs(ParryKind.CIRCULAR))
                            .sentence());
        }
        if (refusal instanceof Refusal.KindDiffers kind) {
            return Sentence.warning(
                    "From " + kind.from().word() + " to " + kind.to().word() + " is a "
                            + kind.is().words() + ", not a " + kind.called().words() + ".",
                    fault.ways()
                            .or("leave out the kind of parry", Change.parriedAs(ParryKind.UNSTATED))
                            .or("use the right name", Change.parriedAs(kind.is()))
                            .sentence());
        }
        if (refusal instanceof Refusal.NothingToParry) {
            return Sentence.warning("There is no attack to parry here.", metOrMoved(setting, fault));
        }
        return Sentence.none();
    }

    /** An attack that the parry meets, or a hand that only goes there. */
    private static WayOut metOrMoved(Setting setting, Fault fault) {
        return fault.ways()
                .or(
                        "write an attack into the " + fault.by().other().word() + "'s turn",
                        Change.partnerTouches(setting.lines()))
                .or("write 'move the hand' instead of 'parry'", Change.each(ParryMisses::moved))
                .sentence();
    }

    private static Action moved(Action action) {
        return action instanceof Action.Parry parry && parry.position().isPresent()
                ? new Action.Place(parry.position().get(), parry.inTheLunge())
                : action;
    }

    private static String closes(Setting setting, Position position) {
        String lines = setting.parries().row(position).lines().stream()
                .sorted()
                .map(Line::words)
                .collect(Collectors.joining(" or the "));
        return Sentence.capital(position) + " closes the " + lines;
    }
}
