package org.drillwright.autofix;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.check.jury.Judge;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/** A drill's file with another text, put to the rules in the same school. */
final class Draft {

    private final Subject subject;
    private final DrillReader reader;
    private final List<Finding> before;

    Draft(Subject subject) {
        this.subject = subject;
        this.reader = new DrillReader(subject.school());
        this.before = found(subject.file().text()).orElse(List.of());
    }

    /** What a text mends: it reads without more findings than there are, rule by rule, and with fewer in all. */
    Optional<List<Finding>> mends(String text) {
        return found(text).filter(this::isBetter).map(this::gone);
    }

    /** An edit as a way to mend what it mends; none if it mends nothing. */
    Optional<Fix> fix(Message title, Edit edit, boolean onlyOne) {
        return mends(Edit.apply(subject.file().text(), List.of(edit)))
                .map(mended -> new Fix(title, mended, edit, onlyOne));
    }

    private boolean isBetter(List<Finding> after) {
        Map<String, Long> now = count(before);
        return after.size() < before.size()
                && count(after).entrySet().stream()
                        .allMatch(rule -> rule.getValue() <= now.getOrDefault(rule.getKey(), 0L));
    }

    private static Map<String, Long> count(List<Finding> findings) {
        return findings.stream().collect(Collectors.groupingBy(Finding::rule, Collectors.counting()));
    }

    /** What is not found any more; places may have moved. */
    private List<Finding> gone(List<Finding> after) {
        List<String> left = new ArrayList<>(after.stream().map(Draft::said).toList());
        return before.stream().filter(finding -> !left.remove(said(finding))).toList();
    }

    private static String said(Finding finding) {
        return finding.rule() + ": " + finding.what().english();
    }

    /** What is found in a text; empty if it cannot be read. */
    private Optional<List<Finding>> found(String text) {
        Reading<ReadDrill> reading =
                reader.read(subject.drill().id(), subject.file().name(), text.getBytes(StandardCharsets.UTF_8));
        return reading.value()
                .map(read -> subject.rewritten(read.drill(), read.file(), read.places()))
                .map(drill -> Stream.concat(reading.findings().stream(), Judge.drill(drill).stream())
                        .toList());
    }
}
