package org.drillwright.check.form;

import java.util.Optional;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Position;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;

/** What one turn tells of the other rank, that rank's own turn has, too. */
public final class PartnerNotTold implements Rule {

    private static final RuleText TEXT = new RuleText(
            "partner-not-told",
            Severity.WARNING,
            false,
            "Whatever a turn asks of the other side is also in the other side's own turn.",
            "Each fencer goes by their own turn; one who hears both expects them to agree. Common practice, no source.",
            """
            steps:
              - leader: Leaders, extend to the high inside line and lunge; followers, retreat.
            #                                                                         ^^^^^^^
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
            """,
            """
            steps:
              - leader: Leaders, extend to the high inside line and lunge; followers, parry quarte.
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
        if (!subject.isPartnerDrill()) {
            return;
        }
        subject.turns().forEach(turn -> judge(subject, turn.step(), turn.side(), findings));
    }

    private static void judge(Subject subject, int step, Side side, Findings findings) {
        Side other = side.other();
        Utterance own = subject.turn(step, other);
        Written words = subject.turnWords(step, side);
        if (!own.isRead() || own.clauses().isEmpty() || words.text().isEmpty()) {
            return;
        }
        Optional<Clause> missing = subject.reader().read(words.text()).clauses().stream()
                .filter(clause -> clause.subject().equals(Optional.of(other)) && clause.isCertain())
                .filter(clause -> own.actions().stream().noneMatch(action -> agree(clause.action(), action)))
                .findFirst();
        missing.ifPresent(clause -> findings.warning(
                TEXT.id(),
                words.span(clause.span()),
                "This is asked of the " + other.word() + ", and the " + other.word() + "'s own turn on count "
                        + subject.count(step) + " does not say it.",
                "Write it in the " + other.word() + "'s turn, or leave it out here. Only the " + other.word()
                        + "'s own turn was played."));
    }

    /** Whether two actions may be one, the one told with more words than the other. */
    private static boolean agree(Action told, Action own) {
        if (told instanceof Action.Aside || told instanceof Action.Unread) {
            return true;
        }
        if (told instanceof Action.Step step && own instanceof Action.Step taken) {
            return step.equals(taken);
        }
        boolean hands = guards(told) && guards(own);
        boolean attacks = attacks(told) && attacks(own);
        Optional<Position> one = position(told);
        Optional<Position> two = position(own);
        boolean same = one.isEmpty() || two.isEmpty() || one.equals(two);
        return (hands || attacks || told.getClass().equals(own.getClass())) && same;
    }

    private static boolean attacks(Action action) {
        return action instanceof Action.Strike || action instanceof Action.Lunge;
    }

    private static boolean guards(Action action) {
        return action instanceof Action.Parry
                || action instanceof Action.Place
                || action instanceof Action.OnGuard
                || action instanceof Action.Recover
                || action instanceof Action.Answer
                || action instanceof Action.State;
    }

    private static Optional<Position> position(Action action) {
        if (action instanceof Action.Parry parry) {
            return parry.position();
        }
        if (action instanceof Action.Place place) {
            return Optional.of(place.position());
        }
        if (action instanceof Action.OnBlade blade) {
            return blade.position();
        }
        if (action instanceof Action.OnGuard guard) {
            return guard.stance().guard();
        }
        return action instanceof Action.Recover recover ? recover.stance().guard() : Optional.empty();
    }
}
