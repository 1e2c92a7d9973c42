package org.drillwright.check.courtesy;

import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.notation.Utterance;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** A drill begins and ends with a salute by both (Technical Rules t.1, t.122). */
public final class SaluteMissing implements Rule {

    private static final RuleText TEXT = new RuleText(SaluteMissing.class, "salute-missing", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        judge(subject, "opening", subject.script().opening(), findings);
        judge(subject, "closing", subject.script().closing(), findings);
    }

    private static void judge(Subject subject, String end, Utterance words, Findings findings) {
        // Words that were not read may say it; that they were not is said by not-fully-checked.
        boolean both = Intent.isSaluteByBoth(words) || !words.isRead();
        if (both) {
            return;
        }
        FieldPath path = FieldPath.of(end);
        boolean absent = subject.words(path).text().isEmpty();
        if (absent) {
            findings.error(
                    TEXT.id(),
                    subject.span(path),
                    Message.of(SaluteMissing.class, "salute-missing.no-" + end),
                    Message.of(SaluteMissing.class, "salute-missing.add", end, usual(end, subject)));
        } else {
            findings.error(
                    TEXT.id(),
                    subject.span(path),
                    Message.of(
                            SaluteMissing.class,
                            "salute-missing." + end + (Intent.salutes(words).isEmpty() ? "" : ".one")),
                    Message.of(
                            SaluteMissing.class,
                            "salute-missing." + end + ".way",
                            subject.typed(SaluteMissing.class, "typed.salute"),
                            ended(subject.words(path).text())));
        }
    }

    /** What the author wrote, so that another sentence may follow. */
    private static String ended(String text) {
        return text.matches("(?s).*[.!?;:…]\\s*") ? text : text.strip() + ".";
    }

    private static Message usual(String end, Subject subject) {
        return subject.typed(SaluteMissing.class, (subject.isPartnerDrill() ? "usual." : "usual.solo.") + end);
    }
}
