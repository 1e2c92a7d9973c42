package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Who renews an attack has made one. */
public final class NothingToRenew extends RefusalRule {

    public NothingToRenew() {
        super(new RuleText(NothingToRenew.class, "nothing-to-renew", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        return fault.refusal() instanceof Refusal.NothingToRenew none
                ? Sentence.error(
                        Message.of(NothingToRenew.class, "nothing-to-renew." + word(none.role()), Terms.of(fault.by())),
                        fault.ways()
                                .or(
                                        Message.of(NothingToRenew.class, "nothing-to-renew.call-attack"),
                                        Amendment.as(Action.Role.ATTACK))
                                .sentence())
                : Sentence.none();
    }

    private static String word(Action.Role role) {
        return switch (role) {
            case REDOUBLE -> "redoublement";
            case REPRISE -> "reprise";
            default -> "remise";
        };
    }
}
