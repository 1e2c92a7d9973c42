package org.drillwright.check.jury;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Folder;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.Remedy;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.source.Finding;
import org.drillwright.source.Findings;
import org.drillwright.source.FormerRules;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Puts drills to the rules. */
public final class Judge {

    /** At one place, and of one severity, in the order of the rules. */
    private static final Comparator<Finding> BY_PLACE =
            Comparator.comparing((Finding finding) -> finding.span().start()).thenComparing(Finding::severity);

    private Judge() {}

    /**
     * All that the rules find in one drill, by place; warnings that the drill accepts are notes. Where a value that rules
     * rest on could not be read, only what they find whatever it is.
     */
    public static List<Finding> drill(Subject subject) {
        List<List<Finding>> found =
                subject.meanings().stream().map(Judge::found).toList();
        Map<String, String> accepted = new HashMap<>();
        subject.drill().accept().forEach((rule, reason) -> accepted.put(FormerRules.now(rule), reason));
        return found.get(0).stream()
                .filter(finding -> found.stream().allMatch(all -> all.stream().anyMatch(one -> isLike(one, finding))))
                .map(finding -> accept(finding, accepted))
                .distinct()
                .sorted(BY_PLACE)
                .toList();
    }

    private static List<Finding> found(Subject subject) {
        Findings findings = new Findings(subject.file());
        Rules.ALL.forEach(rule -> rule.judge(subject, findings));
        return findings.list();
    }

    private static boolean isLike(Finding one, Finding other) {
        return one.rule().equals(other.rule()) && one.span().equals(other.span()) && one.severity() == other.severity();
    }

    private static Finding accept(Finding finding, Map<String, String> accepted) {
        String reason = accepted.get(finding.rule());
        boolean safety = Rules.text(finding.rule()).map(RuleText::safety).orElse(false);
        if (reason == null || safety || finding.severity() != Severity.WARNING) {
            return finding;
        }
        return new Finding(
                finding.rule(),
                Severity.NOTE,
                finding.file(),
                finding.span(),
                finding.what(),
                Message.of(Judge.class, "accepted", reason));
    }

    /** The turns that play in place of those that the rules find fault with, in the order of the rules. */
    public static List<Remedy> remedies(Subject subject) {
        return Rules.ALL.stream()
                .filter(RefusalRule.class::isInstance)
                .map(RefusalRule.class::cast)
                .flatMap(rule -> rule.remedies(subject).stream())
                .distinct()
                .toList();
    }

    /** All that the rules find in the folder as a whole. */
    public static List<Finding> folder(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        Rules.OF_THE_FOLDER.forEach(rule -> findings.addAll(rule.judge(folder)));
        return findings;
    }
}
