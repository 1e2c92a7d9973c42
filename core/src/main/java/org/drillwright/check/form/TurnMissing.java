package org.drillwright.check.form;

import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Side;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Each count has something for both sides. */
public final class TurnMissing implements Rule {

    private static final RuleText TEXT = new RuleText(TurnMissing.class, "turn-missing", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        Drill drill = subject.drill();
        if (drill.steps().isEmpty()) {
            findings.error(
                    TEXT.id(),
                    subject.keySpan(FieldPath.of("steps")),
                    Message.of(TurnMissing.class, "turn-missing.no-counts"),
                    Message.of(TurnMissing.class, "turn-missing.no-counts.way"));
        }
        for (Subject.Place turn : subject.turns()) {
            if (drill.steps().get(turn.step()).turn(turn.side()).isEmpty()) {
                report(subject, turn.step(), turn.side(), findings);
            }
        }
    }

    private static void report(Subject subject, int step, Side side, Findings findings) {
        findings.error(
                TEXT.id(),
                subject.spanInStep(step, ""),
                Message.of(TurnMissing.class, "turn-missing.what", subject.count(step), Terms.of(side)),
                subject.drill().form() == Form.SOLO ? alone(subject, step, side) : told(subject, side));
    }

    private static Message told(Subject subject, Side side) {
        return Message.of(
                TurnMissing.class,
                "turn-missing.way",
                Terms.of(side),
                side.word(),
                subject.typed(TurnMissing.class, "typed.hold"));
    }

    /** In a drill for one the leader only calls; whoever writes what everyone does under it is told where that goes. */
    private static Message alone(Subject subject, int step, Side side) {
        return side == Side.LEADER
                ? Message.of(TurnMissing.class, "turn-missing.caller", call(subject, step))
                : Message.of(TurnMissing.class, "turn-missing.class");
    }

    /** The class's own words as a call, where they are one short sentence. */
    private static Message call(Subject subject, int step) {
        Written turn = subject.printedWords(step, Side.FOLLOWER);
        String words = turn.text().strip().replaceFirst("[.!]$", "");
        boolean callable = words.matches("[\\p{L}\\p{M}' -]{1,30}");
        return callable ? Message.plain(words + "!") : subject.typed(TurnMissing.class, "typed.call");
    }
}
