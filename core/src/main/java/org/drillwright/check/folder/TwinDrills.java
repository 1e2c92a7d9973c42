package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.check.TurnWords;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** No two drills are the same, turn for turn. */
public final class TwinDrills implements FolderRule {

    private static final RuleText TEXT = new RuleText(TwinDrills.class, "twin-drills", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        Map<Integer, List<Subject>> seen = new HashMap<>();
        for (Subject subject : folder.drills()) {
            List<Subject> alike = seen.computeIfAbsent(subject.turnsHash(), hash -> new ArrayList<>(1));
            first(alike, subject).ifPresentOrElse(first -> report(first, subject, findings), () -> alike.add(subject));
        }
        return findings;
    }

    /** Of those whose turns may be the same, the one whose turns are. */
    private static Optional<Subject> first(List<Subject> alike, Subject subject) {
        if (alike.isEmpty()) {
            return Optional.empty();
        }
        TurnWords words = TurnWords.of(subject.drill());
        return alike.stream()
                .filter(one -> TurnWords.of(one.drill()).equals(words))
                .findFirst();
    }

    private static void report(Subject first, Subject subject, List<Finding> findings) {
        if (!subject.drill().steps().isEmpty()) {
            findings.add(new Finding(
                    TEXT.id(),
                    Severity.ERROR,
                    subject.file(),
                    subject.keySpan(FieldPath.of("steps")),
                    Message.of(
                            TwinDrills.class, "twin-drills.what", first.drill().id()),
                    Message.of(TwinDrills.class, "twin-drills.way")));
        }
    }
}
