package org.drillwright.editing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.drillwright.read.SourceTree;
import org.drillwright.school.FileKind;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/** Where the files of a school name its drills. */
final class DrillNames {

    private static final Map<FileKind, Pattern> NAMES = patterns(Map.of(
            FileKind.DRILL, "needs/\\d+|variant-of",
            FileKind.SETTINGS, "sets/[^/]+/drills/\\d+",
            FileKind.ROSTER, "people/\\d+/knows/\\d+",
            FileKind.CLASS, "drills/\\d+",
            FileKind.TERM, "groups/\\d+/drills/\\d+|fundamentals/drills/\\d+|exam/drills/\\d+"));

    /** The groups whose keys are drills. */
    private static final Map<FileKind, Pattern> KEYS =
            patterns(Map.of(FileKind.CLASS, "settings", FileKind.TERM, "value"));

    private DrillNames() {}

    private static Map<FileKind, Pattern> patterns(Map<FileKind, String> texts) {
        Map<FileKind, Pattern> patterns = new EnumMap<>(FileKind.class);
        texts.forEach((kind, text) -> patterns.put(kind, Pattern.compile(text)));
        return patterns;
    }

    /** Whether what stands there is the name of a drill. */
    static boolean isName(FileKind kind, FieldPath path) {
        return matches(NAMES, kind, path);
    }

    /** Whether the keys of what stands there are names of drills. */
    static boolean areKeys(FileKind kind, FieldPath path) {
        return matches(KEYS, kind, path);
    }

    private static boolean matches(Map<FileKind, Pattern> patterns, FileKind kind, FieldPath path) {
        Pattern pattern = patterns.get(kind);
        return pattern != null && pattern.matcher(path.text()).matches();
    }

    /**
     * A drill named in a file.
     *
     * @param id as YAML gives it
     * @param span with its quotes
     * @param bracketed whether it stands between brackets
     */
    record Name(String id, Span span, boolean bracketed) {}

    /** All that a file names, in its order; nothing of a file whose form is broken. */
    static List<Name> in(FileKind kind, SourceFile file) {
        List<Name> names = new ArrayList<>();
        SourceTree.of(file).ifPresent(tree -> gather(kind, tree, FieldPath.ROOT, false, names));
        return names;
    }

    private static void gather(FileKind kind, SourceTree tree, FieldPath path, boolean bracketed, List<Name> names) {
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
