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
import org.drillwright.phrase.GroundCovered;
import org.drillwright.phrase.State;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** The last count leaves both where the first began. */
public final class NotBackAtStart implements Rule {

    private static final RuleText TEXT =
            new RuleText(NotBackAtStart.class, "not-back-at-start", Severity.WARNING, false);

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
        List<Message> differences =
                differences(subject, subject.replay().start(), subject.replay().end());
        if (!differences.isEmpty()) {
            findings.warning(
                    TEXT.id(),
                    subject.spanInStep(last, ""),
                    Message.of(NotBackAtStart.class, "not-back-at-start.after", Message.clauses(differences)),
                    Message.of(NotBackAtStart.class, "not-back-at-start.way"));
        }
    }

    private static List<Message> differences(Subject subject, State start, State end) {
        List<Message> differences = new ArrayList<>();
        for (Side side : Side.values()) {
            if (!subject.isPartnerDrill() && side == Side.LEADER) {
                continue;
            }
            Message who = subject.isPartnerDrill()
                    ? Terms.of(side)
                    : Message.of(NotBackAtStart.class, "not-back-at-start.class");
            feet(who, start, end, side).ifPresent(differences::add);
            hand(who, start, end, side).ifPresent(differences::add);
        }
        if (start.measure().isExact()
                && end.measure().isKnown()
                && !start.measure().meets(end.measure())) {
            differences.add(Message.of(
                    NotBackAtStart.class,
                    "not-back-at-start.distance",
                    end.measure().words(),
                    start.measure().words()));
        }
        blades(start, end).ifPresent(differences::add);
        ground(subject, start, end).ifPresent(differences::add);
        return differences;
    }

    /** Steps that do not add up, where no measure shows it: of a class alone, or of two after half steps. */
    private static Optional<Message> ground(Subject subject, State start, State end) {
        OptionalInt follower = GroundCovered.gained(subject.replay(), Side.FOLLOWER);
        if (!subject.isPartnerDrill()) {
            return follower.isPresent() && follower.getAsInt() != 0
                    ? Optional.of(steps(follower.getAsInt(), "class.forward", "class.behind"))
                    : Optional.empty();
        }
        OptionalInt leader = GroundCovered.gained(subject.replay(), Side.LEADER);
        boolean counted = leader.isPresent() && follower.isPresent();
        boolean unmeasured = start.measure().isKnown() && !end.measure().isKnown();
        int closed = counted ? leader.getAsInt() + follower.getAsInt() : 0;
        return counted && unmeasured && closed != 0
                ? Optional.of(steps(closed, "closer", "further"))
                : Optional.empty();
    }

    /** A difference of half steps in words. */
    private static Message steps(int halves, String above, String below) {
        int size = Math.abs(halves);
        Message steps = size == 1
                ? Message.of(NotBackAtStart.class, "not-back-at-start.half")
                : Message.counted(
                        NotBackAtStart.class,
                        "not-back-at-start." + (size % 2 == 0 ? "steps" : "steps-half"),
                        size / 2);
        return Message.of(NotBackAtStart.class, "not-back-at-start." + (halves > 0 ? above : below), steps);
    }

    private static Optional<Message> feet(Message who, State start, State end, Side side) {
        boolean onGuard = start.of(side).feet().is(Feet.ON_GUARD);
        return onGuard && end.of(side).feet().is(Feet.LUNGED)
                ? Optional.of(Message.of(NotBackAtStart.class, "not-back-at-start.in-lunge", who))
                : Optional.empty();
    }

    private static Optional<Message> hand(Message who, State start, State end, Side side) {
        Fact<Position> first = start.of(side).hand();
        Fact<Position> last = end.of(side).hand();
        boolean differs = first.isKnown() && last.isKnown() && !first.equals(last);
        boolean lunged = end.of(side).feet().is(Feet.LUNGED);
        return differs && !lunged
                ? Optional.of(Message.of(
                        NotBackAtStart.class, "not-back-at-start.hand", who, position(last), position(first)))
                : Optional.empty();
    }

    private static Message position(Fact<Position> hand) {
        return hand.value().map(Terms::of).orElse(Message.none());
    }

    private static Optional<Message> blades(State start, State end) {
        Fact<Optional<Engagement>> first = start.engagement();
        Fact<Optional<Engagement>> last = end.engagement();
        boolean known = first.isKnown() && last.isKnown();
        boolean touched = first.value().flatMap(blades -> blades).isPresent();
        boolean touch = last.value().flatMap(blades -> blades).isPresent();
        if (!known || touched == touch) {
            return Optional.empty();
        }
        return Optional.of(
                touch
                        ? Message.of(NotBackAtStart.class, "not-back-at-start.touch")
                        : Message.of(NotBackAtStart.class, "not-back-at-start.apart"));
    }
}
