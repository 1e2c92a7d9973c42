package org.drillwright.print.command.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.SchoolReader;
import org.drillwright.school.DrillFiles;
import org.drillwright.source.FieldPath;
import org.drillwright.wording.Message;

/** A school's settings alone: no drill is read for them. */
public final class Settings {

    private Settings() {}

    /** The language that a school states; nothing if there is none, or none that can be read. */
    public static Optional<Language> language(Path root) {
        try {
            return read(root)
                    .filter(read ->
                            read.places().words(FieldPath.of("language")).isPresent())
                    .map(read -> read.school().language());
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Those of a folder; nothing if it states none, or none that can be read. */
    public static Optional<School> of(Path root) {
        try {
            return read(root).map(ReadSchool::school);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(Settings.class, "settings.the.settings.in.cannot", root), problem);
        }
    }

    private static Optional<ReadSchool> read(Path root) throws IOException {
        Optional<Path> file = DrillFiles.settings(root);
        return file.isEmpty()
                ? Optional.empty()
                : SchoolReader.read(DrillFiles.SETTINGS, Files.readAllBytes(file.get()))
                        .value();
    }
}
