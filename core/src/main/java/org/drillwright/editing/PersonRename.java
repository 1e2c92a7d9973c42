package org.drillwright.editing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.autofix.Edit;
import org.drillwright.autofix.RosterRename;
import org.drillwright.plan.roster.Roster;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolTexts;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;

/**
 * Somebody's name in the files of a school, and another name for them. The roster keeps the old one beside it, so that what is
 * on record, which is never written anew, stays theirs.
 */
public final class PersonRename {

    private PersonRename() {}

    /**
     * What gives somebody another name.
     *
     * @param roster the roster with the new name
     * @param edits in classes and terms, by file
     */
    public record Renamed(SchoolTexts.Text roster, String text, Map<Path, List<Edit>> edits) {}

    /** Who is named at an offset. */
    public static Optional<DrillRename.Named> named(FileKind kind, SourceFile file, int offset) {
        return NameIndex.PEOPLE.at(kind, file, offset);
    }

    /** Everywhere that somebody is named. */
    public static List<DrillRename.Mention> mentions(SchoolFolder school, String name) throws IOException {
        return NameIndex.PEOPLE.mentions(school, name);
    }

    /** Where somebody stands in the roster, by the name of now or else by one from before; none if the roster is a table. */
    public static Optional<DrillRename.Mention> place(SchoolFolder school, String name) throws IOException {
        Optional<DrillRename.Mention> own =
                NameIndex.OWN_LINES.mentions(school, name).stream().findFirst();
        return own.isPresent()
                ? own
                : NameIndex.FORMER.mentions(school, name).stream().findFirst();
    }

    /** Why somebody cannot have another name: one sentence; empty if they can. */
    public static Optional<Message> refusal(SchoolFolder school, String old, String now) throws IOException {
        if (now.isBlank()) {
            return Optional.of(Message.of(PersonRename.class, "person.empty"));
        }
        Optional<Roster> roster = ClassFolder.open(school).roster();
        if (roster.isEmpty()) {
            return Optional.of(Message.of(PersonRename.class, "person.roster"));
        }
        if (!roster.get().names().contains(old)) {
            return Optional.of(Message.of(PersonRename.class, "person.unknown", old));
        }
        if (roster(school).isEmpty()) {
            return Optional.of(Message.of(PersonRename.class, "person.table"));
        }
        return roster.get().names().contains(now) || roster.get().former().containsKey(now)
                ? Optional.of(Message.of(PersonRename.class, "person.taken", now))
                : Optional.empty();
    }

    private static Optional<SchoolTexts.Text> roster(SchoolFolder school) throws IOException {
        return SchoolTexts.of(school).stream()
                .filter(text -> text.kind() == FileKind.ROSTER)
                .findFirst();
    }

    /** What gives somebody another name everywhere; nothing if the roster could not be written so that it reads as it did. */
    public static Optional<Renamed> of(SchoolFolder school, String old, String now) throws IOException {
        Map<Path, List<Edit>> edits = new LinkedHashMap<>(NameIndex.PEOPLE.edits(school, old, now));
        Optional<SchoolTexts.Text> roster = roster(school);
        roster.ifPresent(text -> edits.remove(text.file()));
        var reader = ClassFolder.open(school).rosterReader();
        return roster.flatMap(text ->
                RosterRename.of(reader, text.text(), old, now).map(written -> new Renamed(text, written, edits)));
    }
}
