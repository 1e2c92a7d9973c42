package org.drillwright.editing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drillwright.autofix.Edit;
import org.drillwright.formatter.Scalars;
import org.drillwright.read.SourceTree;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolTexts;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/** Where the files of a school name its drills, or its people. */
final class NameIndex {

    static final NameIndex DRILLS = new NameIndex(
            Map.of(
                    FileKind.DRILL, "needs/\\d+|variant-of",
                    FileKind.SETTINGS, "sets/[^/]+/drills/\\d+",
                    FileKind.ROSTER, "people/\\d+/knows/\\d+",
                    FileKind.CLASS, "drills/\\d+",
                    FileKind.TERM, "groups/\\d+/drills/\\d+|fundamentals/drills/\\d+|exam/drills/\\d+"),
            Map.of(FileKind.CLASS, "settings", FileKind.TERM, "value"));

    static final NameIndex PEOPLE = new NameIndex(
            Map.of(
                    FileKind.ROSTER, "people/\\d+/(name|apart/\\d+|was/\\d+)|assistants/\\d+",
                    FileKind.CLASS, "(away|solo)/\\d+",
                    FileKind.TERM, "groups/\\d+/people/\\d+|dates/\\d+/away/\\d+"),
            Map.of());

    /** The lines of the roster in which people stand themselves, by the name that they have now. */
    static final NameIndex OWN_LINES =
            new NameIndex(Map.of(FileKind.ROSTER, "people/\\d+/name|assistants/\\d+"), Map.of());

    /** The names that people had before, in their own lines. */
    static final NameIndex FORMER = new NameIndex(Map.of(FileKind.ROSTER, "people/\\d+/was/\\d+"), Map.of());

    private final Map<FileKind, Pattern> names;
    private final Map<FileKind, Pattern> keys;

    /** @param keys the groups whose keys are names */
    private NameIndex(Map<FileKind, String> names, Map<FileKind, String> keys) {
        this.names = patterns(names);
        this.keys = patterns(keys);
    }

    private static Map<FileKind, Pattern> patterns(Map<FileKind, String> texts) {
        Map<FileKind, Pattern> patterns = new EnumMap<>(FileKind.class);
        texts.forEach((kind, text) -> patterns.put(kind, Pattern.compile(text)));
        return patterns;
    }

    /** Whether what stands there is such a name. */
    boolean isName(FileKind kind, FieldPath path) {
        return matches(names, kind, path);
    }

    /** Whether the keys of what stands there are such names. */
    boolean areKeys(FileKind kind, FieldPath path) {
        return matches(keys, kind, path);
    }

    private static boolean matches(Map<FileKind, Pattern> patterns, FileKind kind, FieldPath path) {
        Pattern pattern = patterns.get(kind);
        return pattern != null && pattern.matcher(path.text()).matches();
    }

    /**
     * Somebody or something named in a file.
     *
     * @param id as YAML gives it
     * @param span with its quotes
     * @param bracketed whether it stands between brackets
     */
    record Name(String id, Span span, boolean bracketed) {}

    /** What is named at an offset. */
    Optional<DrillRename.Named> at(FileKind kind, SourceFile file, int offset) {
        return in(kind, file).stream()
                .filter(name ->
                        name.span().start() <= offset && offset <= name.span().end())
                .map(name -> new DrillRename.Named(name.id(), name.span()))
                .findFirst();
    }

    /** Everywhere that one is named. */
    List<DrillRename.Mention> mentions(SchoolFolder school, String id) throws IOException {
        List<DrillRename.Mention> mentions = new ArrayList<>();
        for (SchoolTexts.Text text : SchoolTexts.of(school)) {
            in(text.kind(), text.text()).stream()
                    .filter(name -> name.id().equals(id))
                    .forEach(name -> mentions.add(new DrillRename.Mention(text, name.span())));
        }
        return mentions;
    }

    /** The edits that write another name wherever one is named, by file. */
    Map<Path, List<Edit>> edits(SchoolFolder school, String old, String now) throws IOException {
        Map<Path, List<Edit>> edits = new LinkedHashMap<>();
        for (SchoolTexts.Text text : SchoolTexts.of(school)) {
            List<Edit> own = in(text.kind(), text.text()).stream()
                    .filter(name -> name.id().equals(old))
                    .map(name -> new Edit(name.span(), Scalars.of(now, name.bracketed(), true)))
                    .toList();
            if (!own.isEmpty()) {
                edits.put(text.file(), own);
            }
        }
        return edits;
    }

    /** All that a file names, in its order; nothing of a file whose form is broken. */
    List<Name> in(FileKind kind, SourceFile file) {
        List<Name> names = new ArrayList<>();
        SourceTree.of(file).ifPresent(tree -> gather(kind, tree, FieldPath.ROOT, false, names));
        return names;
    }

    private void gather(FileKind kind, SourceTree tree, FieldPath path, boolean bracketed, List<Name> names) {
        if (tree instanceof SourceTree.Entries group) {
            for (SourceTree.Entry entry : group.entries()) {
                if (areKeys(kind, path)) {
                    names.add(new Name(entry.key().text(), entry.key().span(), true));
                }
                gather(kind, entry.value(), path.key(entry.key().text()), group.bracketed(), names);
            }
        } else if (tree instanceof SourceTree.Items list) {
            for (int at = 0; at < list.items().size(); at++) {
                gather(kind, list.items().get(at), path.item(at), list.bracketed(), names);
            }
        } else if (tree instanceof SourceTree.Leaf leaf && isName(kind, path)) {
            names.add(new Name(leaf.text().strip(), leaf.span(), bracketed));
        }
    }
}
