package org.drillwright.check.form;

import java.util.List;
import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Level;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** No turn asks for more than its level allows. */
public final class TooMuchInACount implements Rule {

    private static final RuleText TEXT =
            new RuleText(TooMuchInACount.class, "too-much-in-a-count", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        Level.Turns allowed = subject.level().turns();
        if (allowed == Level.Turns.FREE) {
            return;
        }
        TurnReader reader = subject.reader();
        for (Subject.Place turn : subject.turns()) {
            Written words = subject.turnWords(turn.step(), turn.side());
            boolean stopped = stops(subject.turn(turn.step(), turn.side().other()));
            if (!report(subject, subject.turn(turn.step(), turn.side()), words, stopped, findings)) {
                reportPrinted(subject, turn.step(), turn.side(), reader, findings);
            }
        }
    }

    /** What is printed may not ask for more than what is read, where it can be read itself. */
    private static void reportPrinted(Subject subject, int step, Side side, TurnReader reader, Findings findings) {
        Written printed = subject.printedWords(step, side);
        boolean isCallersWord = !subject.isPartnerDrill() && side == Side.LEADER;
        if (!isCallersWord
                && !printed.text().equals(subject.turnWords(step, side).text())) {
            report(subject, reader.read(printed.text()), printed, stops(subject.turn(step, side.other())), findings);
        }
    }

    private static boolean stops(Utterance turn) {
        return turn.clauses().stream()
                .anyMatch(clause -> clause.action() instanceof Action.Strike strike
                        && strike.role().stops());
    }

    private static boolean report(Subject subject, Utterance turn, Written words, boolean stopped, Findings findings) {
        Level.Turns allowed = subject.level().turns();
        List<Clause> surplus = JoinedActions.surplus(turn, allowed == Level.Turns.JOINED, stopped);
        boolean sure = turn.unread().isEmpty() && turn.clauses().stream().allMatch(Intent::isSurelyDone);
        if (surplus.isEmpty() || !sure) {
            return false;
        }
        Clause first = surplus.get(0);
        String asked = words.text().substring(first.span().start(), first.span().end());
        findings.error(
                TEXT.id(),
                words.span(first.span()),
                Message.of(TooMuchInACount.class, "too-much-in-a-count.what", asked),
                allowed == Level.Turns.ONE
                        ? Message.of(TooMuchInACount.class, "too-much-in-a-count.way.one")
                        : Message.of(
                                TooMuchInACount.class,
                                "too-much-in-a-count.way.joined",
                                subject.typed(TooMuchInACount.class, "typed.joined")));
        return true;
    }
}
