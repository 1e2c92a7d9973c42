package org.drillwright.school;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.read.ReadingLimits;
import org.drillwright.source.SourceFile;

/** The files of a school that are written by hand in YAML, with the texts that count. */
public final class SchoolTexts {

    private SchoolTexts() {}

    /** A file, what it is read as, and its text. */
    public record Text(Path file, FileKind kind, SourceFile text) {}

    /**
     * All of them: settings, roster, drills, classes, terms.
     *
     * @throws IOException if one that is there cannot be read
     */
    public static List<Text> of(SchoolFolder school) throws IOException {
        Path root = school.root();
        List<Path> files = new ArrayList<>();
        DrillFiles.settings(root, school.unsaved()).ifPresent(files::add);
        ClassFiles.rosters(root).stream().limit(1).filter(SchoolTexts::isYaml).forEach(files::add);
        school.entries().forEach(entry -> files.add(entry.file()));
        files.addAll(ClassFiles.classes(root));
        files.addAll(ClassFiles.terms(root));
        List<Text> texts = new ArrayList<>();
        for (Path file : files) {
            byte[] bytes = school.unsaved().bytes(file, ReadingLimits.FILE_BYTES);
            SourceFile text = new SourceFile(DrillFiles.shown(root, file), new String(bytes, StandardCharsets.UTF_8));
            FileKind.of(root, file).ifPresent(kind -> texts.add(new Text(file, kind, text)));
        }
        return texts;
    }

    private static boolean isYaml(Path file) {
        return !DrillFiles.name(file).toLowerCase(Locale.ROOT).endsWith(".csv");
    }
}
