package org.drillwright.school;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.check.Subject;
import org.drillwright.read.ReadingRule;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** Finds drills whose ids are one on another computer: they differ by capitals, by normal form, or not at all. */
final class SameIds {

    private SameIds() {}

    static List<SchoolFolder.Entry> report(List<SchoolFolder.Entry> entries) {
        Map<String, SchoolFolder.Entry> seen = new HashMap<>();
        List<SchoolFolder.Entry> result = new ArrayList<>();
        for (SchoolFolder.Entry entry : entries) {
            SchoolFolder.Entry first = seen.putIfAbsent(folded(entry), entry);
            result.add(first == null ? entry : clash(entry, first));
        }
        return result;
    }

    private static String folded(SchoolFolder.Entry entry) {
        String id = DrillFiles.id(entry.file());
        return Normalizer.normalize(id, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    private static SchoolFolder.Entry clash(SchoolFolder.Entry entry, SchoolFolder.Entry first) {
        List<Finding> findings = new ArrayList<>(entry.findings());
        findings.add(new Finding(
                ReadingRule.IDS_TOO_ALIKE.id(),
                Severity.ERROR,
                entry.subject().map(Subject::file).orElseGet(() -> new SourceFile(entry.name(), "")),
                Span.at(0),
                Message.of(SameIds.class, "same.id", first.name()),
                Message.of(SameIds.class, "same.id.way")));
        return new SchoolFolder.Entry(entry.file(), entry.name(), entry.subject(), findings);
    }
}
