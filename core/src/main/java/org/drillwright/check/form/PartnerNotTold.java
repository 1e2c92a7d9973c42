package org.drillwright.check.form;

import java.util.Optional;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.SameDeed;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** What one turn tells of the other rank, that rank's own turn has, too. */
public final class PartnerNotTold implements Rule {

    private static final RuleText TEXT =
            new RuleText(PartnerNotTold.class, "partner-not-told", Severity.WARNING, false);

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
                .filter(clause -> own.actions().stream().noneMatch(action -> SameDeed.mayBe(clause.action(), action)))
                .findFirst();
        missing.ifPresent(clause -> findings.warning(
                TEXT.id(),
                words.span(clause.span()),
                Message.of(PartnerNotTold.class, "partner-not-told.what", Terms.of(other), subject.count(step)),
                Message.of(PartnerNotTold.class, "partner-not-told.way", Terms.of(other))));
    }
}
