package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.mark.PrintMark;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** No two drills have the same print mark. */
public final class SamePrintMark implements FolderRule {

    private static final RuleText TEXT = new RuleText(SamePrintMark.class, "same-print-mark", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        Map<PrintMark, Subject> seen = new HashMap<>();
        for (Subject subject : folder.drills()) {
            Subject first = seen.putIfAbsent(subject.mark(), subject);
            if (first != null && !isTwin(first, subject, folder)) {
                findings.add(new Finding(
                        TEXT.id(),
                        Severity.ERROR,
                        subject.file(),
                        subject.span(FieldPath.of("title")),
                        Message.of(
                                SamePrintMark.class,
                                "same-print-mark.what",
                                first.drill().id()),
                        Message.of(SamePrintMark.class, "same-print-mark.way")));
            }
        }
        return findings;
    }

    /** A copy turn for turn is told of by another rule. */
    private static boolean isTwin(Subject first, Subject subject, Folder folder) {
        return !subject.drill().steps().isEmpty()
                && PrintMark.saysTheSame(first.drill(), subject.drill(), folder.school());
    }
}
