package org.drillwright.check.form;

import java.util.List;
import java.util.Optional;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Height;
import org.drillwright.notation.Position;
import org.drillwright.notation.Utterance;
import org.drillwright.notation.Width;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** What is printed does not contradict what is read. */
public final class SayUnlikeMeans implements Rule {

    private static final RuleText TEXT =
            new RuleText(SayUnlikeMeans.class, "say-unlike-means", Severity.WARNING, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        TurnReader reader = subject.reader();
        for (Subject.Place turn : subject.turns()) {
            boolean callersWord = !subject.isPartnerDrill() && turn.side() == Side.LEADER;
            if (callersWord) {
                continue;
            }
            Written say = subject.printedWords(turn.step(), turn.side());
            Written means = subject.turnWords(turn.step(), turn.side());
            if (!say.text().equals(means.text())) {
                compare(reader.read(say.text()), reader.read(means.text()), say, findings);
            }
        }
    }

    private static void compare(Utterance said, Utterance meant, Written say, Findings findings) {
        boolean readable = said.isRead() && !said.clauses().isEmpty() && meant.isRead();
        if (readable && contradict(actions(said), actions(meant))) {
            findings.warning(
                    TEXT.id(),
                    say.whole(),
                    Message.of(SayUnlikeMeans.class, "say-unlike-means.what"),
                    Message.of(SayUnlikeMeans.class, "say-unlike-means.way"));
        }
    }

    /** Whether the two name other positions, or go to other lines. */
    private static boolean contradict(List<Action> said, List<Action> meant) {
        return differ(positions(said), positions(meant))
                || differ(heights(said), heights(meant))
                || differ(widths(said), widths(meant))
                || differ(steps(said), steps(meant));
    }

    private static <T> boolean differ(List<T> one, List<T> other) {
        return !one.isEmpty() && !other.isEmpty() && !one.equals(other);
    }

    private static List<Position> positions(List<Action> actions) {
        return actions.stream().flatMap(action -> position(action).stream()).toList();
    }

    private static Optional<Position> position(Action action) {
        if (action instanceof Action.Parry parry) {
            return parry.position();
        }
        if (action instanceof Action.OnGuard onGuard) {
            return onGuard.stance().guard();
        }
        if (action instanceof Action.Recover recover) {
            return recover.stance().guard();
        }
        return action instanceof Action.Place place ? Optional.of(place.position()) : Optional.empty();
    }

    private static List<Height> heights(List<Action> actions) {
        return actions.stream().flatMap(action -> aim(action).height().stream()).toList();
    }

    private static List<Width> widths(List<Action> actions) {
        return actions.stream().flatMap(action -> aim(action).width().stream()).toList();
    }

    private static Aim aim(Action action) {
        if (action instanceof Action.Strike strike) {
            return strike.aim();
        }
        return action instanceof Action.Lunge lunge ? lunge.aim() : Aim.UNSTATED;
    }

    private static List<Action.Foot> steps(List<Action> actions) {
        return actions.stream()
                .filter(Action.Step.class::isInstance)
                .map(action -> ((Action.Step) action).foot())
                .toList();
    }

    private static List<Action> actions(Utterance utterance) {
        return utterance.clauses().stream()
                .map(Clause::action)
                .filter(action -> !(action instanceof Action.Aside))
                .toList();
    }
}
