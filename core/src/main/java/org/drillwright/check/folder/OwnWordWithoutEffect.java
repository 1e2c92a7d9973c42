package org.drillwright.check.folder;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillwright.check.Folder;
import org.drillwright.check.FolderRule;
import org.drillwright.check.RuleText;
import org.drillwright.reading.OwnWordFlaw;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;

/** Each of a school's own words can be read as what it is said to mean, and is not read so already. */
public final class OwnWordWithoutEffect implements FolderRule {

    private static final RuleText TEXT = new RuleText(
            "own-word-without-effect",
            Severity.ERROR,
            false,
            "Each of the school's own words stands for known words, and would not be read that way without its entry.",
            "An entry that does nothing misleads: its author believes that the word is understood.",
            """
            words:
              stick it: extnd
            # ^^^^^^^^
            """,
            """
            words:
              stick it: extend
            """);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> judge(Folder folder) {
        List<Finding> findings = new ArrayList<>();
        TurnReader reader = TurnReader.standard();
        folder.settings()
                .ifPresent(file -> folder.school().words().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .forEach(word -> reader.flaw(word.getKey(), word.getValue())
                                .ifPresent(flaw -> findings.add(new Finding(
                                        TEXT.id(),
                                        Severity.ERROR,
                                        file,
                                        folder.places()
                                                .span(FieldPath.of("words").key(word.getKey())),
                                        what(flaw, word.getKey(), word.getValue()),
                                        wayOut(flaw, reader, word.getValue()))))));
        return findings;
    }

    private static String what(OwnWordFlaw flaw, String say, String means) {
        return switch (flaw) {
            case EMPTY -> "There are no words in '" + say + ": " + means + "'.";
            case MEANING_UNKNOWN -> "'" + means + "' contains unknown words, so '" + say + "' means nothing.";
            case NO_CHANGE -> "'" + say + "' is read as '" + means + "' without this entry.";
            case MANNER ->
                "'" + say + "' says how a thing is done, whatever the thing; it cannot mean '" + means + "'.";
        };
    }

    private static String wayOut(OwnWordFlaw flaw, TurnReader reader, String means) {
        return switch (flaw) {
            case EMPTY -> "Write your own word, a colon, and words listed by 'drillwright words'.";
            case MEANING_UNKNOWN ->
                reader.read(means).unread().stream()
                        .flatMap(unread -> reader.meant(means, unread).stream())
                        .findFirst()
                        .map(near -> "Did you mean '" + near + "'? 'drillwright words' lists the known words.")
                        .orElse("Write words listed by 'drillwright words'.");
            case NO_CHANGE -> "Delete the line.";
            case MANNER -> "Delete the line, or choose another word for the action.";
        };
    }
}
