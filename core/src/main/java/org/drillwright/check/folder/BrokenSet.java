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

/** The drills that a set lists exist, each once. */
public final class BrokenSet implements FolderRule {

    private static final RuleText TEXT = new RuleText(
            "broken-set",
            Severity.ERROR,
            false,
            "Every drill listed in a set is in the folder, and is listed only once.",
            "An assistant gets the set as it is printed, and a missing card is missed in the hall.",
            """
            sets:
              spring:
                drills: [parry-of-quarte, parry-of-quart]
            #                             ^^^^^^^^^^^^^^
            """,
            """
            sets:
              spring:
                drills: [parry-of-quarte]
            """);

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
                        "The set '" + set.name() + "' takes the drills tagged '" + tag + "', but no drill has"
                                + " that tag.",
                        Nearest.to(tag, tags)
                                .map(near -> "Did you mean '" + near + "'?")
                                .orElse("Write 'tags: [" + tag + "]' in the drills that belong to it."))));
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
                    "The set '" + set.name() + "' has no drills.",
                    "No drill has everything it asks for. Take the set out, or write a drill for it."));
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
                String hint = Nearest.to(id, known)
                        .map(near -> "Did you mean '" + near + "'?")
                        .orElse("Take it out, or write that drill.");
                findings.add(error(
                        file,
                        span,
                        "The set '" + set.name() + "' lists '" + id + "', which is not in this folder.",
                        hint));
            } else if (again) {
                findings.add(error(
                        file,
                        span,
                        "The set '" + set.name() + "' lists '" + id + "' twice.",
                        "Take one of the two out."));
            }
        }
    }

    private static Finding error(SourceFile file, Span span, String what, String wayOut) {
        return new Finding(TEXT.id(), Severity.ERROR, file, span, what, wayOut);
    }
}
