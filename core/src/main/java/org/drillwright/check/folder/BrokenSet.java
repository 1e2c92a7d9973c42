package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.model.DrillSet;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** The drills that a set lists exist, each once. */
public final class BrokenSet implements FolderRule {

    private static final RuleText TEXT = new RuleText(BrokenSet.class, "broken-set", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        Set<String> known =
                folder.drills().stream().map(subject -> subject.drill().id()).collect(Collectors.toSet());
        Set<String> tags = folder.drills().stream()
                .flatMap(subject -> subject.drill().tags().stream())
                .collect(Collectors.toSet());
        folder.settings()
                .ifPresent(file -> folder.school().sets().forEach(set -> {
                    judge(set, known, file, folder, findings);
                    judgeTag(set, tags, file, folder, findings);
                    judgeEmpty(set, tags, file, folder, findings);
                }));
        return findings;
    }

    /** A tag that no drill has is a slip; of a file that could not be read the tags are not known. */
    private static void judgeTag(
            DrillSet set, Set<String> tags, SourceFile file, Folder folder, List<Finding> findings) {
        boolean listed = set.isListed() || !folder.unread().isEmpty();
        set.tag()
                .filter(tag -> !listed && !tags.contains(tag))
                .ifPresent(tag -> findings.add(error(
                        file,
                        folder.places()
                                .span(FieldPath.of("sets").key(set.name()).key("tag")),
                        Message.of(BrokenSet.class, "broken-set.tag", set.name(), tag),
                        Nearest.to(tag, tags)
                                .map(Nearest::meant)
                                .orElse(Message.of(BrokenSet.class, "broken-set.tag.way", tag)))));
    }

    /** What no drill belongs to is printed as nothing at all. */
    private static void judgeEmpty(
            DrillSet set, Set<String> tags, SourceFile file, Folder folder, List<Finding> findings) {
        boolean told = set.isListed() || !set.tag().map(tags::contains).orElse(true);
        boolean holds = folder.drills().stream().anyMatch(subject -> set.holds(subject.drill()));
        if (!told && !holds && folder.unread().isEmpty()) {
            findings.add(error(
                    file,
                    folder.places().span(FieldPath.of("sets").key(set.name())),
                    Message.of(BrokenSet.class, "broken-set.empty", set.name()),
                    Message.of(BrokenSet.class, "broken-set.empty.way")));
        }
    }

    private static void judge(DrillSet set, Set<String> known, SourceFile file, Folder folder, List<Finding> findings) {
        Set<String> listed = new HashSet<>();
        for (int at = 0; at < set.drills().size(); at++) {
            String id = set.drills().get(at);
            boolean again = !listed.add(id);
            Span span = folder.places()
                    .span(FieldPath.of("sets").key(set.name()).key("drills").item(at));
            if (!known.contains(id) && !folder.unread().contains(id)) {
                Message hint = Nearest.to(id, known)
                        .map(Nearest::meant)
                        .orElse(Message.of(BrokenSet.class, "broken-set.unknown.way"));
                findings.add(
                        error(file, span, Message.of(BrokenSet.class, "broken-set.unknown", set.name(), id), hint));
            } else if (again) {
                findings.add(error(
                        file,
                        span,
                        Message.of(BrokenSet.class, "broken-set.twice", set.name(), id),
                        Message.of(BrokenSet.class, "broken-set.twice.way")));
            }
        }
    }

    private static Finding error(SourceFile file, Span span, Message what, Message wayOut) {
        return new Finding(TEXT.id(), Severity.ERROR, file, span, what, wayOut);
    }
}
