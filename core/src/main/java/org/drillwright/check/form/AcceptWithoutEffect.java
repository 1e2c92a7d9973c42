package org.drillwright.check.form;

import java.util.Optional;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Rules;
import org.drillwright.check.Subject;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.FormerRules;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;

/** What a drill accepts are rules that can be accepted. */
public final class AcceptWithoutEffect implements Rule {

    private static final RuleText TEXT = new RuleText(
            "accept-without-effect",
            Severity.ERROR,
            false,
            "The rules listed under 'accept' exist and are not about safety, and each has a reason.",
            "An acceptance that does nothing would be relied on; a safety rule is not to be argued away.",
            """
            accept:
              safety-note-missing: the partners know each other
            # ^^^^^^^^^^^^^^^^^^^
            """,
            """
            accept:
              not-back-at-start: the next drill goes on from here
            """);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        for (String written : subject.drill().accept().keySet()) {
            String id = FormerRules.now(written);
            Span span = subject.keySpan(FieldPath.of("accept").key(written));
            Optional<RuleText> rule = Rules.text(id);
            if (rule.isEmpty()) {
                findings.error(
                        TEXT.id(),
                        span,
                        "There is no rule '" + id + "'.",
                        Nearest.to(id, Rules.ids())
                                .map(known -> "Did you mean '" + known + "'?")
                                .orElse("'check --rules' lists them."));
            } else if (rule.get().safety()) {
                findings.error(
                        TEXT.id(),
                        span,
                        "'" + written + "' is a safety rule and cannot be accepted away.",
                        "Take this line out and correct what the rule finds.");
            } else if (!id.equals(written)) {
                findings.note(
                        TEXT.id(),
                        span,
                        "The rule '" + written + "' is called '" + id + "' now.",
                        "Write the new name; the old one still works until the next release.");
            }
        }
    }
}
