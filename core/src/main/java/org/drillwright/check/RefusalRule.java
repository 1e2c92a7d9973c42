package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** A rule that puts into words what the phrase refuses. */
public abstract class RefusalRule implements Rule {

    private final RuleText text;

    protected RefusalRule(RuleText text) {
        this.text = text;
    }

    @Override
    public final RuleText text() {
        return text;
    }

    @Override
    public final void judge(Subject subject, Findings findings) {
        List<Fault> faults = subject.faults();
        for (Fault fault : faults) {
            say(fault, subject)
                    .ifPresent(sentence -> findings.add(
                            text.id(),
                            severity(sentence, fault),
                            fault.span(),
                            sentence.what(),
                            sentence.wayOut().words()));
        }
    }

    private Severity severity(Sentence sentence, Fault fault) {
        boolean doubtful = restsOnBothTurns() && fault.inDoubt() && sentence.severity() == Severity.ERROR;
        return doubtful ? Severity.WARNING : sentence.severity();
    }

    /**
     * Whether what this rule refuses could be right if the other words of the count, which were not read, said more of where
     * a blade stands or a stroke goes: then it only warns.
     */
    protected boolean restsOnBothTurns() {
        return false;
    }

    /** The turns that play in place of those that this rule finds fault with. */
    public final List<Remedy> remedies(Subject subject) {
        List<Remedy> remedies = new ArrayList<>();
        for (Fault fault : subject.faults()) {
            say(fault, subject)
                    .ifPresent(sentence -> sentence.wayOut()
                            .turns()
                            .forEach(turn -> remedies.add(new Remedy(text.id(), fault.span(), turn))));
        }
        return remedies;
    }

    /** What this rule says of a fault; empty if the fault is another rule's. */
    protected abstract Optional<Sentence> say(Fault fault, Subject subject);
}
