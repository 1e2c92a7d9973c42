package org.drillwright.editing;

import java.io.IOException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drillwright.mend.Edit;
import org.drillwright.read.ReadingLimits;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolTexts;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.tidy.Scalars;

/**
 * A drill's name in the files of its school, and another name for it. What is on record, and the plans that were kept, are
 * never written anew.
 */
public final class DrillRename {

    /** What some system cannot have in a file's name. */
    private static final Pattern NO_NAME = Pattern.compile(".*[/\\\\:*?\"<>|\\p{Cntrl}].*|[. ].*|.*[. ]|");

    private DrillRename() {}

    /** A drill's id where it stands. */
    public record Named(String id, Span span) {}

    /** A file, and where it names a drill. */
    public record Mention(SchoolTexts.Text file, Span span) {}

    /** The drill that is named at an offset. */
    public static Optional<Named> named(FileKind kind, SourceFile file, int offset) {
        return DrillNames.in(kind, file).stream()
                .filter(name ->
                        name.span().start() <= offset && offset <= name.span().end())
                .map(name -> new Named(name.id(), name.span()))
                .findFirst();
    }

    /** Everywhere that a drill is named. */
    public static List<Mention> mentions(SchoolFolder school, String id) throws IOException {
        List<Mention> mentions = new ArrayList<>();
        for (SchoolTexts.Text text : SchoolTexts.of(school)) {
            DrillNames.in(text.kind(), text.text()).stream()
                    .filter(name -> name.id().equals(id))
                    .forEach(name -> mentions.add(new Mention(text, name.span())));
        }
        return mentions;
    }

    /** Why a drill cannot have another name: one sentence; empty if it can. */
    public static Optional<String> refusal(SchoolFolder school, String now) {
        if (now.length() > ReadingLimits.SHORT_TEXT || NO_NAME.matcher(now).matches() || now.equals("school")) {
            return Optional.of("'" + now + "' can be no file's name on every computer.");
        }
        return school.entries().stream()
                .map(entry -> entry.name().replaceFirst(".*/", "").replaceFirst("\\.[^.]*$", ""))
                .filter(id -> folded(id).equals(folded(now)))
                .map(id -> "There is a drill '" + id + "' already.")
                .findFirst();
    }

    private static String folded(String id) {
        return Normalizer.normalize(id, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }

    /** The edits that give a drill another name everywhere, by file. */
    public static Map<Path, List<Edit>> edits(SchoolFolder school, String old, String now) throws IOException {
        Map<Path, List<Edit>> edits = new LinkedHashMap<>();
        for (SchoolTexts.Text text : SchoolTexts.of(school)) {
            List<Edit> own = DrillNames.in(text.kind(), text.text()).stream()
                    .filter(name -> name.id().equals(old))
                    .map(name -> new Edit(name.span(), Scalars.of(now, name.bracketed(), true)))
                    .toList();
            if (!own.isEmpty()) {
                edits.put(text.file(), own);
            }
        }
        return edits;
    }
}
