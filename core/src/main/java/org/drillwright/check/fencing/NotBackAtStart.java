package org.drillwright.check.fencing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Engagement;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Ground;
import org.drillwright.phrase.State;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** The last count leaves both where the first began. */
public final class NotBackAtStart implements Rule {

    private static final RuleText TEXT = new RuleText(
            "not-back-at-start",
            Severity.WARNING,
            false,
            "The last count leaves both where the first began: steps forward and back cancel out, half steps"
                    + " included, and so do those of a class that moves without partners.",
            "Otherwise the drill cannot be repeated without a shuffle of feet in between.",
            """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - leader: Hold the lunge and take the touch.
            #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                follower: Riposte straight to the high inside line.
                distance: extension
                safety: Stop the point on the jacket.
            """,
            """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - leader: Recover on guard in sixte.
                follower: Return to guard in sixte.
                distance: extension to lunge
            """);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        int last = subject.drill().steps().size() - 1;
        if (last < 0) {
            return;
        }
        List<String> differences =
                differences(subject, subject.replay().start(), subject.replay().end());
        if (!differences.isEmpty()) {
            findings.warning(
                    TEXT.id(),
                    subject.spanInStep(last, ""),
                    "After the last count " + String.join("; ", differences) + ".",
                    "Add what brings both back to the start, or accept this with a reason.");
        }
    }

    private static List<String> differences(Subject subject, State start, State end) {
        List<String> differences = new ArrayList<>();
        for (Side side : Side.values()) {
            if (!subject.isPartnerDrill() && side == Side.LEADER) {
                continue;
            }
            String who = subject.isPartnerDrill() ? "the " + side.word() : "the class";
            feet(who, start, end, side).ifPresent(differences::add);
            hand(who, start, end, side).ifPresent(differences::add);
        }
        if (start.measure().isExact()
                && end.measure().isKnown()
                && !start.measure().meets(end.measure())) {
            differences.add("the distance is " + end.measure().words() + ", not "
                    + start.measure().words());
        }
        blades(start, end).ifPresent(differences::add);
        ground(subject, start, end).ifPresent(differences::add);
        return differences;
    }

    /** Steps that do not add up, where no measure shows it: of a class alone, or of two after half steps. */
    private static Optional<String> ground(Subject subject, State start, State end) {
        OptionalInt follower = Ground.gained(subject.replay(), Side.FOLLOWER);
        if (!subject.isPartnerDrill()) {
            return follower.isPresent() && follower.getAsInt() != 0
                    ? Optional.of(
                            "the class is " + steps(follower.getAsInt(), "forward of", "behind") + " where it began")
                    : Optional.empty();
        }
        OptionalInt leader = Ground.gained(subject.replay(), Side.LEADER);
        boolean counted = leader.isPresent() && follower.isPresent();
        boolean unmeasured = start.measure().isKnown() && !end.measure().isKnown();
        int closed = counted ? leader.getAsInt() + follower.getAsInt() : 0;
        return counted && unmeasured && closed != 0
                ? Optional.of(
                        "the two are " + steps(closed, "closer together than", "further apart than") + " at the start")
                : Optional.empty();
    }

    /** Half steps in words. */
    private static String steps(int halves, String above, String below) {
        int size = Math.abs(halves);
        String whole = size / 2 == 0 ? "" : size / 2 == 1 ? "a step" : size / 2 + " steps";
        String half = size % 2 == 0 ? "" : "half a step";
        String told = whole.isEmpty() || half.isEmpty() ? whole + half : whole + " and a half";
        return told + " " + (halves > 0 ? above : below);
    }

    private static Optional<String> feet(String who, State start, State end, Side side) {
        boolean onGuard = start.of(side).feet().is(Feet.ON_GUARD);
        return onGuard && end.of(side).feet().is(Feet.LUNGED)
                ? Optional.of(who + " is still in the lunge")
                : Optional.empty();
    }

    private static Optional<String> hand(String who, State start, State end, Side side) {
        Fact<Position> first = start.of(side).hand();
        Fact<Position> last = end.of(side).hand();
        boolean differs = first.isKnown() && last.isKnown() && !first.equals(last);
        boolean lunged = end.of(side).feet().is(Feet.LUNGED);
        return differs && !lunged
                ? Optional.of(who + "'s hand is in "
                        + last.value().map(Position::word).orElse("") + ", not in "
                        + first.value().map(Position::word).orElse(""))
                : Optional.empty();
    }

    private static Optional<String> blades(State start, State end) {
        Fact<Optional<Engagement>> first = start.engagement();
        Fact<Optional<Engagement>> last = end.engagement();
        boolean known = first.isKnown() && last.isKnown();
        boolean touched = first.value().flatMap(blades -> blades).isPresent();
        boolean touch = last.value().flatMap(blades -> blades).isPresent();
        if (!known || touched == touch) {
            return Optional.empty();
        }
        return Optional.of(touch ? "the blades touch, but were apart" : "the blades are apart, but touched");
    }
}
