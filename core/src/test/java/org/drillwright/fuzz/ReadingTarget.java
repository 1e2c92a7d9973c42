package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.ClassReader;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.Reading;
import org.drillwright.read.RosterReader;
import org.drillwright.read.SchoolReader;

/** Any bytes, as a drill, as a school's settings, as a roster of both kinds and as a class. */
public final class ReadingTarget {

    private static final DrillReader DRILLS = new DrillReader(School.DEFAULT);
    private static final Set<String> IDS = Set.of("a-drill", "parry-of-quarte");
    private static final RosterReader ROSTERS = new RosterReader(School.DEFAULT, IDS);
    private static final ClassReader CLASSES = new ClassReader(
            School.DEFAULT,
            new Roster(List.of(Person.named("Ash"), Person.named("Bo")), List.of("Cy"), List.of()),
            IDS);

    /** Mending is tried with one in so many drills: it takes as long as everything else together. */
    private static final int MENDED = 4;

    private ReadingTarget() {}

    public static void fuzzerTestOneInput(byte[] bytes) {
        told(() -> SchoolReader.read("school.yaml", bytes));
        told(() -> ROSTERS.read("roster.yaml", bytes));
        told(() -> ROSTERS.read("roster.csv", bytes));
        told(() -> CLASSES.read("tonight.yaml", bytes));
        told(() -> DRILLS.read("a-drill", "a-drill.yaml", bytes), ReadingTarget::lacks)
                .value()
                .ifPresent(read -> drill(read, bytes));
    }

    private static void drill(ReadDrill read, byte[] bytes) {
        if (!lacks(read)) {
            WholeDrill.isIn(read);
            WholeDrill.isTidied(read, bytes);
            WholeDrill.isOfTheSchema(read);
        }
        Judgement judgement = Judgement.of(read.drill(), read.file(), read.places());
        judgement.holds();
        if (bytes.length % MENDED == 0) {
            judgement.mendingAddsNoFinding();
        }
    }

    private static boolean lacks(ReadDrill read) {
        return !read.places().lost().isEmpty();
    }

    /** What is read whole or not at all. */
    private static <T> void told(Supplier<Reading<T>> reader) {
        told(reader, whole -> false);
    }

    /** Read twice, with the same outcome; places are equal only if their files are, so they are compared as they are shown. */
    private static <T> Reading<T> told(Supplier<Reading<T>> reader, Predicate<T> lacks) {
        Reading<T> reading = reader.get();
        Told.reading(reading, lacks);
        assertEquals(shown(reading), shown(reader.get()));
        return reading;
    }

    private static List<String> shown(Reading<?> reading) {
        return reading.findings().stream()
                .map(finding -> finding.rule()
                        + finding.span()
                        + finding.what().english()
                        + finding.wayOut().english())
                .toList();
    }
}
