package org.drillwright.print.command.write;

import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.read.ReadingLimits;
import org.drillwright.wording.Message;

/** The settings that a school begins with: its name and what it prints on; the rest is as in any school. */
public final class SchoolSkeleton {

    private SchoolSkeleton() {}

    /** @param name of the school */
    public static String of(String name, SheetSize sheet, Language language) {
        String clean = name.replaceAll("[\\p{Cc}\\p{Cf}\\s]+", " ").strip();
        if (clean.isEmpty() || clean.length() > ReadingLimits.SHORT_TEXT) {
            throw new CannotRun(
                    Message.of(SchoolSkeleton.class, "school-skeleton.a.schools.name.has", ReadingLimits.SHORT_TEXT));
        }
        return FileTemplate.of("school.yaml", language.locale())
                .replace("{sheet}", sheet.word())
                .replace("{language}", language.word())
                .replace("{name}", Quoted.of(clean));
    }
}
