package org.drillwright.school;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;

/** Lets a roster name a set, or a level, where it means every drill of it. */
final class KnownSets {

    private KnownSets() {}

    /** All that may stand under {@code knows}. */
    static List<String> names(School school, Collection<String> drills) {
        List<String> names = new ArrayList<>(drills);
        school.sets().stream().map(DrillSet::name).forEach(names::add);
        school.levels().stream().map(Level::name).forEach(names::add);
        return names;
    }

    /** Sets replaced by their drills; a drill of the same name comes first. */
    static Roster spelledOut(Roster roster, SchoolFolder school) {
        return roster.withEach(person -> spelledOut(person, school));
    }

    private static Person spelledOut(Person person, SchoolFolder school) {
        Set<String> known = new HashSet<>();
        for (String name : person.knows()) {
            if (school.entry(name).isPresent()) {
                known.add(name);
            } else {
                school.school()
                        .set(name)
                        .ifPresentOrElse(
                                set -> school.entriesOf(set).forEach(entry -> known.add(DrillFiles.id(entry.file()))),
                                () -> known.add(name));
            }
        }
        return person.withKnown(known);
    }
}
