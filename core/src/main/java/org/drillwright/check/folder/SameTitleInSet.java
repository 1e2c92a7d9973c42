package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Level;
import org.drillwright.model.Shelves;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** No two drills of a set have the same title. */
public final class SameTitleInSet implements FolderRule {

    private static final RuleText TEXT = new RuleText(SameTitleInSet.class, "same-title-in-set", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        Shelves shelves =
                new Shelves(folder.drills().stream().map(Subject::drill).toList());
        for (DrillSet set : sets(folder)) {
            Map<String, Subject> titles = new HashMap<>();
            for (int number : shelves.numbers(set)) {
                judge(set, folder.drills().get(number), titles, findings);
            }
        }
        return firstOfEachPlace(findings);
    }

    /** A pair that meets in several sets is told once. */
    private static List<Finding> firstOfEachPlace(List<Finding> findings) {
        Map<List<Object>, Finding> first = new LinkedHashMap<>();
        findings.forEach(finding -> first.putIfAbsent(List.of(finding.file().name(), finding.span()), finding));
        return List.copyOf(first.values());
    }

    private static List<DrillSet> sets(Folder folder) {
        List<DrillSet> sets = new ArrayList<>(folder.school().sets());
        for (Level level : folder.school().levels()) {
            folder.school().set(level.name()).filter(set -> !sets.contains(set)).ifPresent(sets::add);
        }
        return sets;
    }

    private static void judge(DrillSet set, Subject subject, Map<String, Subject> titles, List<Finding> findings) {
        String title = subject.drill().title().toLowerCase(Locale.ROOT);
        Subject first = titles.putIfAbsent(title, subject);
        if (first != null) {
            findings.add(new Finding(
                    TEXT.id(),
                    Severity.ERROR,
                    subject.file(),
                    subject.span(FieldPath.of("title")),
                    Message.of(
                            SameTitleInSet.class,
                            "same-title-in-set.what",
                            set.name(),
                            first.drill().id()),
                    Message.of(SameTitleInSet.class, "same-title-in-set.way")));
        }
    }
}
