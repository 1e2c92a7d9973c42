package org.drillwright.print.command.write;

import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.Locale;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.folder.Locations;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** Where a new drill goes: into the folder named like its level, or into the school's own. */
public final class DrillPlace {

    private DrillPlace() {}

    public static Path of(SchoolFolder school, Skeleton skeleton) {
        school.entries().stream()
                .filter(entry -> folded(DrillFiles.id(entry.file())).equals(folded(skeleton.id())))
                .findFirst()
                .ifPresent(entry -> {
                    throw new CannotRun(Message.of(
                            DrillPlace.class, "drill-place.there.is.already.a", skeleton.id(), entry.file()));
                });
        Path folder = Locations.existing(school.root(), skeleton.level().name())
                .filter(Files::isDirectory)
                .orElse(school.root());
        return folder.resolve(skeleton.id() + ".yaml");
    }

    private static String folded(String id) {
        return Normalizer.normalize(id, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
