package org.drillwright.editing;

import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drillwright.autofix.Edit;
import org.drillwright.read.ReadingLimits;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolTexts;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * A drill's name in the files of its school, and another name for it. What is on record, and the plans that were kept, are
 * never written anew.
 */
public final class DrillRename {

    /** What some system cannot have in a file's name. */
    private static final Pattern NO_NAME = Pattern.compile(".*[/\\\\:*?\"<>|\\p{Cntrl}].*|[. ].*|.*[. ]|");

    private DrillRename() {}

    /** A drill's id, or somebody's name, where it stands. */
    public record Named(String id, Span span) {}

    /** A file, and where it names one. */
    public record Mention(SchoolTexts.Text file, Span span) {}

    /** The drill that is named at an offset. */
    public static Optional<Named> named(FileKind kind, SourceFile file, int offset) {
        return NameIndex.DRILLS.at(kind, file, offset);
    }

    /** Everywhere that a drill is named. */
    public static List<Mention> mentions(SchoolFolder school, String id) throws IOException {
        return NameIndex.DRILLS.mentions(school, id);
    }

    /** Why a drill cannot have another name: one sentence; empty if it can. */
    public static Optional<Message> refusal(SchoolFolder school, String now) {
        if (now.length() > ReadingLimits.SHORT_TEXT || NO_NAME.matcher(now).matches() || now.equals("school")) {
            return Optional.of(Message.of(DrillRename.class, "rename.no-file", now));
        }
        return school.entries().stream()
                .map(entry -> entry.name().replaceFirst(".*/", "").replaceFirst("\\.[^.]*$", ""))
                .filter(id -> folded(id).equals(folded(now)))
                .map(id -> Message.of(DrillRename.class, "rename.taken", id))
                .findFirst();
    }

    private static String folded(String id) {
        return Normalizer.normalize(id, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    /** The edits that give a drill another name everywhere, by file. */
    public static Map<Path, List<Edit>> edits(SchoolFolder school, String old, String now) throws IOException {
        return NameIndex.DRILLS.edits(school, old, now);
    }
}
