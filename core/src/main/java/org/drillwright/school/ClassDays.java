package org.drillwright.school;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.ClassReader;
import org.drillwright.read.ReadingLimits;

/** The days on which a school has classes, as far as its files say. */
final class ClassDays {

    private final SchoolFolder school;
    private final ClassReader reader;

    ClassDays(SchoolFolder school, Roster roster, Collection<String> drills) {
        this.school = school;
        this.reader = new ClassReader(school.school(), school.habits(), roster, drills);
    }

    /** Those of the class files and of the plans that were kept; a file that can't be read says none, which is told elsewhere. */
    List<LocalDate> all() {
        List<LocalDate> days = new ArrayList<>();
        try {
            days.addAll(PlanFiles.days(school.root()));
            for (var file : ClassFiles.classes(school.root())) {
                reader.read(DrillFiles.name(file), DrillFiles.bytes(file, ReadingLimits.FILE_BYTES))
                        .value()
                        .map(ClassBrief::date)
                        .ifPresent(days::add);
            }
        } catch (IOException toldElsewhere) {
            return days;
        }
        return days;
    }
}
