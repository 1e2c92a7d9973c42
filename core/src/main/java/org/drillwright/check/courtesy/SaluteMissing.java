package org.drillwright.check.courtesy;

import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.notation.Utterance;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;

/** A drill begins and ends with a salute by both (Technical Rules t.1, t.122). */
public final class SaluteMissing implements Rule {

    private static final RuleText TEXT = new RuleText(
            "salute-missing",
            Severity.ERROR,
            false,
            "The opening and the closing each include a salute by both.",
            "The salute opens and closes the exercise; it is due before and after (Technical Rules t.122).",
            """
            closing: Step back out of distance. Masks off.
            #        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
            """,
            """
            closing: Step back out of distance. Masks off. Salute your partner.
            """);

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
                    "The drill has no " + end + ", so there is no salute at its " + side(end) + ".",
                    "Add a line: " + end + ": " + usual(end, subject));
        } else {
            findings.error(
                    TEXT.id(),
                    subject.span(path),
                    Intent.salutes(words).isEmpty()
                            ? "The " + end + " has no salute."
                            : "In the " + end + " only one side salutes.",
                    "Write: " + end + ": "
                            + (end.equals("opening")
                                    ? "Salute. " + subject.words(path).text()
                                    : subject.words(path).text() + " Salute."));
        }
    }

    private static String side(String end) {
        return end.equals("opening") ? "beginning" : "end";
    }

    private static String usual(String end, Subject subject) {
        if (!subject.isPartnerDrill()) {
            return end.equals("opening") ? "Salute. On guard." : "Stand at attention. Salute.";
        }
        return end.equals("opening") ? "Salute. Masks on. On guard." : "Step back out of distance. Masks off. Salute.";
    }
}
