package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Step;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/** No two drills are the same, turn for turn. */
public final class NoTwins implements FolderRule {

    private static final RuleText TEXT = new RuleText(
            "no-twins",
            Severity.ERROR,
            false,
            "No two drills have the same start, weapon, hands and turns.",
            "A copy that was never changed would be taught as something new.",
            """
            steps:
            #^^^^
              - leader: Advance.
                follower: Retreat.
                distance: out
            """,
            """
            steps:
              - leader: Advance.
                follower: Hold on guard.
                distance: out
            """);

    private static final Pattern NEITHER_LETTER_NOR_DIGIT = Pattern.compile("[^\\p{L}\\p{N}]+");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        Map<List<String>, Subject> seen = new HashMap<>();
        for (Subject subject : folder.drills()) {
            Subject first = seen.putIfAbsent(turns(subject), subject);
            if (first != null && !subject.drill().steps().isEmpty()) {
                findings.add(new Finding(
                        TEXT.id(),
                        Severity.ERROR,
                        subject.file(),
                        subject.keySpan(FieldPath.of("steps")),
                        "All turns are those of " + first.drill().id() + ".",
                        "Change what this drill was copied for, or delete it."));
            }
        }
        return findings;
    }

    private static List<String> turns(Subject subject) {
        List<String> turns = new ArrayList<>(List.of(
                subject.drill().weapon().word(),
                subject.drill().hands().word(),
                fold(subject.drill().start())));
        for (Step step : subject.drill().steps()) {
            turns.add(step.leader().map(turn -> fold(turn.read())).orElse(""));
            turns.add(step.follower().map(turn -> fold(turn.read())).orElse(""));
        }
        return turns;
    }

    private static String fold(String text) {
        return NEITHER_LETTER_NOR_DIGIT
                .matcher(text.toLowerCase(Locale.ROOT))
                .replaceAll(" ")
                .strip();
    }
}
