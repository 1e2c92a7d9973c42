package org.drillwright.check.form;

import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Hands;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** What the start or the opening says of right and left hands is what the drill is played with. */
public final class HandsAtOdds implements Rule {

    private static final RuleText TEXT = new RuleText(HandsAtOdds.class, "hands-at-odds", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        compare(subject, subject.script().start(), subject.words(FieldPath.of("start")), findings);
        compare(subject, subject.script().opening(), subject.words(FieldPath.of("opening")), findings);
    }

    private static void compare(Subject subject, Utterance told, Written words, Findings findings) {
        Hands played = subject.drill().hands();
        Action.Trifle otherwise = played == Hands.SAME ? Action.Trifle.HANDS_OPPOSITE : Action.Trifle.HANDS_ALIKE;
        Intent.asides(told, otherwise).stream()
                .findFirst()
                .ifPresent(clause -> findings.error(
                        TEXT.id(),
                        words.span(clause.span()),
                        Message.of(
                                HandsAtOdds.class,
                                played == Hands.SAME ? "hands-at-odds.opposite" : "hands-at-odds.alike"),
                        Message.of(
                                HandsAtOdds.class,
                                played == Hands.SAME ? "hands-at-odds.opposite.way" : "hands-at-odds.alike.way")));
    }
}
