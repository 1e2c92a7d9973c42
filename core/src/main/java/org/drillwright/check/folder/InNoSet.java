package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Shelves;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** If some drills of a level are in sets, every drill of that level is in one. */
public final class InNoSet implements FolderRule {

    private static final RuleText TEXT = new RuleText(InNoSet.class, "in-no-set", Severity.NOTE, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<DrillSet> sets = folder.school().sets();
        Shelves shelves =
                new Shelves(folder.drills().stream().map(Subject::drill).toList());
        Set<Integer> held =
                sets.stream().flatMap(set -> shelves.numbers(set).stream()).collect(Collectors.toSet());
        Map<String, Optional<DrillSet>> lists = new HashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (int at = 0; at < folder.drills().size(); at++) {
            Subject subject = folder.drills().get(at);
            if (!held.contains(at)) {
                lists.computeIfAbsent(subject.drill().level(), level -> listOf(level, sets, shelves))
                        .ifPresent(set -> findings.add(new Finding(
                                TEXT.id(),
                                Severity.NOTE,
                                subject.file(),
                                subject.span(FieldPath.of("level")),
                                Message.of(InNoSet.class, "in-no-set.what"),
                                wayOut(subject.drill().id(), set))));
            }
        }
        return findings;
    }

    /** The list in which most drills of a level stand, the first of several; none if they are in no list. */
    public static Optional<DrillSet> listOf(String level, List<DrillSet> sets, Shelves shelves) {
        return sets.stream()
                .filter(DrillSet::isListed)
                .filter(set -> ofLevel(level, set, shelves) > 0)
                .collect(Collectors.reducing(
                        (one, other) -> ofLevel(level, other, shelves) > ofLevel(level, one, shelves) ? other : one));
    }

    /** How a drill comes into a list. */
    public static Message wayOut(String id, DrillSet list) {
        return Message.of(InNoSet.class, "in-no-set.way", list.name(), id);
    }

    private static long ofLevel(String level, DrillSet set, Shelves shelves) {
        return shelves.drills(set).stream()
                .filter(drill -> drill.level().equals(level))
                .count();
    }
}
