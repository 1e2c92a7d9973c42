package org.drillwright.read;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** Says of a key that nobody asked for what it may have been meant to be, and where it belongs. */
record UnknownKey(String key, Span at, FieldPath around, FileKeys keys) {

    private static final FileKeys SCHOOL = FileKeys.of(SchoolReader.shape());
    private static final int FAR = 60;

    /** Whether it is a key of this file that stands too far in or out. */
    boolean isMisplaced() {
        return around.equals(FieldPath.ROOT) ? keys.isOfAPart(key) : keys.isOfTheFile(key);
    }

    void report(Optional<String> meant, Collection<String> asked, Findings findings) {
        if (isMisplaced()) {
            reportPlace(findings);
            return;
        }
        findings.error(
                ReadingRule.UNKNOWN_KEY.id(),
                at,
                Message.of(UnknownKey.class, "key.unknown", key),
                meant.map(known -> Nearest.meant(known).then(written(known, findings.file())))
                        .orElseGet(() -> unless(asked)));
    }

    /** The setting of the school that is called so. */
    static Optional<String> ofTheSchool(String written) {
        return SCHOOL.key(written).filter(SCHOOL::isOfTheFile);
    }

    private Message unless(Collection<String> asked) {
        Message school =
                ofTheSchool(key).isPresent() ? Message.of(UnknownKey.class, "key.of.the.school") : Message.none();
        return school.then(Message.of(UnknownKey.class, "known.here", Message.words(List.copyOf(asked))));
    }

    private Message written(String known, SourceFile file) {
        Span line = line(file);
        String original = file.slice(line);
        int start = at.start() - line.start();
        return Mend.advice(original, original.substring(0, start) + known + original.substring(start + at.length()));
    }

    private Span line(SourceFile file) {
        return file.line(file.position(at.start()).line());
    }

    private void reportPlace(Findings findings) {
        SourceFile file = findings.file();
        String original = file.slice(line(file));
        boolean tooFarOut = around.equals(FieldPath.ROOT);
        int spaces = tooFarOut ? keysAbove(file) : 0;
        findings.error(
                ReadingRule.UNKNOWN_KEY.id(),
                at,
                Message.of(UnknownKey.class, tooFarOut ? "indent.too.little" : "indent.too.far", key),
                Mend.advice(original, " ".repeat(spaces) + original.strip()));
    }

    /** The column in which the keys of the part above stand. */
    private int keysAbove(SourceFile file) {
        int number = file.position(at.start()).line();
        for (int above = number - 1; above >= Math.max(1, number - FAR); above--) {
            String line = file.slice(file.line(above));
            String keyed = line.replaceFirst("- ", "  ");
            int column = Mend.indent(keyed).length();
            if (column > 0 && keyed.strip().matches("[\\w-]+:.*")) {
                return column;
            }
        }
        return 2;
    }
}
