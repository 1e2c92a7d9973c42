package org.drillwright.school;

import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.check.Surroundings;
import org.drillwright.check.jury.Judge;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.source.Finding;

/**
 * What is known of one file: how it was read, and what the rules found in the drill.
 *
 * @param subject the drill in its school, if all of the file could be read and the school's settings are in force
 */
record Known(DrillFile file, Reading<ReadDrill> reading, Optional<Subject> subject, List<Finding> judged) {

    Known {
        judged = List.copyOf(judged);
    }

    /** A file that was read and is not judged. */
    Known(DrillFile file, Reading<ReadDrill> reading) {
        this(file, reading, Optional.empty(), List.of());
    }

    /** The same, put to the rules. */
    Known judgedIn(Surroundings surroundings) {
        Optional<Subject> drill =
                reading.value().map(read -> new Subject(read.drill(), read.file(), read.places(), surroundings));
        return new Known(file, reading, drill, drill.map(Judge::drill).orElse(List.of()));
    }

    /** The same in a school of which nothing has changed that bears on it. */
    Known movedTo(Surroundings surroundings) {
        return new Known(file, reading, subject.map(drill -> drill.in(surroundings)), judged);
    }
}
