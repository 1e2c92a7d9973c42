package org.drillwright.check.jury;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.Subject;
import org.drillwright.model.Hands;
import org.drillwright.source.Finding;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Tells which words of a drill would have to change if its two held their weapons in opposite hands. */
public final class OppositeHands {

    private OppositeHands() {}

    /** Notes on a drill that is written for same hands; none on any other. */
    public static List<Finding> notes(Subject subject) {
        if (!subject.isPartnerDrill() || subject.drill().hands() == Hands.OPPOSITE) {
            return List.of();
        }
        Set<Finding> now = new HashSet<>(refused(subject));
        return refused(subject.withHands(Hands.OPPOSITE)).stream()
                .filter(finding -> !now.contains(finding))
                .map(OppositeHands::note)
                .toList();
    }

    private static List<Finding> refused(Subject subject) {
        Findings findings = new Findings(subject.file());
        Rules.ALL.stream().filter(RefusalRule.class::isInstance).forEach(rule -> rule.judge(subject, findings));
        return findings.list();
    }

    private static Finding note(Finding finding) {
        return new Finding(
                finding.rule(),
                Severity.NOTE,
                finding.file(),
                finding.span(),
                Message.of(OppositeHands.class, "opposite", finding.what()),
                finding.wayOut());
    }
}
