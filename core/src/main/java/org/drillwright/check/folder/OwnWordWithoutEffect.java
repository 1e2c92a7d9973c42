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
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Each of a school's own words can be read as what it is said to mean, and is not read so already. */
public final class OwnWordWithoutEffect implements FolderRule {

    private static final RuleText TEXT =
            new RuleText(OwnWordWithoutEffect.class, "own-word-without-effect", Severity.ERROR, false);

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

    private static Message what(OwnWordFlaw flaw, String say, String means) {
        return switch (flaw) {
            case EMPTY -> Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.empty", say, means);
            case MEANING_UNKNOWN ->
                Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.unknown", means, say);
            case NO_CHANGE -> Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.no-change", say, means);
            case MANNER -> Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.manner", say, means);
        };
    }

    private static Message wayOut(OwnWordFlaw flaw, TurnReader reader, String means) {
        return switch (flaw) {
            case EMPTY -> Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.empty.way");
            case MEANING_UNKNOWN ->
                reader.read(means).unread().stream()
                        .flatMap(unread -> reader.meant(means, unread).stream())
                        .findFirst()
                        .map(near -> Nearest.meant(near)
                                .then(Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.unknown.list")))
                        .orElse(Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.unknown.way"));
            case NO_CHANGE -> Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.no-change.way");
            case MANNER -> Message.of(OwnWordWithoutEffect.class, "own-word-without-effect.manner.way");
        };
    }
}
