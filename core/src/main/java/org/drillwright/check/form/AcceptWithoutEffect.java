package org.drillwright.check.form;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.FormerRules;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** What a drill accepts are rules that can be accepted. */
public final class AcceptWithoutEffect implements Rule {

    private static final RuleText TEXT =
            new RuleText(AcceptWithoutEffect.class, "accept-without-effect", Severity.ERROR, false);

    private final Supplier<List<RuleText>> rules;

    /** @param rules the texts of all that are in force, this one among them */
    public AcceptWithoutEffect(Supplier<List<RuleText>> rules) {
        this.rules = rules;
    }

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        for (String written : subject.drill().accept().keySet()) {
            String id = FormerRules.now(written);
            Span span = subject.keySpan(FieldPath.of("accept").key(written));
            Optional<RuleText> rule =
                    rules.get().stream().filter(text -> text.id().equals(id)).findFirst();
            if (rule.isEmpty()) {
                findings.error(
                        TEXT.id(),
                        span,
                        Message.of(AcceptWithoutEffect.class, "accept-without-effect.unknown", id),
                        Nearest.to(id, ids())
                                .map(Nearest::meant)
                                .orElse(Message.of(AcceptWithoutEffect.class, "accept-without-effect.unknown.way")));
            } else if (rule.get().safety()) {
                findings.error(
                        TEXT.id(),
                        span,
                        Message.of(AcceptWithoutEffect.class, "accept-without-effect.safety", written),
                        Message.of(AcceptWithoutEffect.class, "accept-without-effect.safety.way"));
            } else if (!id.equals(written)) {
                findings.note(
                        TEXT.id(),
                        span,
                        Message.of(AcceptWithoutEffect.class, "accept-without-effect.former", written, id),
                        Message.of(AcceptWithoutEffect.class, "accept-without-effect.former.way"));
            }
        }
    }

    private Set<String> ids() {
        return rules.get().stream().map(RuleText::id).collect(Collectors.toCollection(TreeSet::new));
    }
}
