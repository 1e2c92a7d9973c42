package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.DrillSet;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.RosterReader;
import org.drillwright.read.SchoolReader;
import org.drillwright.table.TableSettings;

/**
 * The names of what lies in a school, found without reading any drill: quick enough for who completes words while they are
 * typed. What cannot be read has no names.
 */
public final class SchoolNames {

    private final Path root;
    private final School school;
    private final TableSettings tables;

    private SchoolNames(Path root, School school, TableSettings tables) {
        this.root = root;
        this.school = school;
        this.tables = tables;
    }

    /** @throws IOException if the folder or a file of it cannot be read; so do the others */
    public static SchoolNames of(Path root) throws IOException {
        Optional<Path> file = DrillFiles.settings(root);
        Optional<ReadSchool> read = file.isEmpty()
                ? Optional.empty()
                : SchoolReader.read(DrillFiles.SETTINGS, DrillFiles.bytes(file.get(), ReadingLimits.FILE_BYTES))
                        .value();
        return new SchoolNames(
                root,
                read.map(ReadSchool::school).orElse(School.DEFAULT),
                read.map(ReadSchool::tables).orElse(TableSettings.NONE));
    }

    /** The drills by id. */
    public List<String> drills() throws IOException {
        return DrillFiles.below(root).stream().map(DrillFile::id).distinct().toList();
    }

    public List<String> levels() {
        return school.levels().stream().map(Level::name).toList();
    }

    /** The sets, or the levels if the school has made no sets. */
    public List<String> sets() {
        List<String> sets = school.sets().stream().map(DrillSet::name).toList();
        return sets.isEmpty() ? levels() : sets;
    }

    public List<String> classes() throws IOException {
        return ClassFiles.classes(root).stream().map(DrillFiles::id).toList();
    }

    public List<String> terms() throws IOException {
        return ClassFiles.terms(root).stream().map(DrillFiles::id).toList();
    }

    /** Everybody on the roster. */
    public List<String> people() throws IOException {
        Optional<Path> file = ClassFiles.rosters(root).stream().findFirst();
        if (file.isEmpty()) {
            return List.of();
        }
        return new RosterReader(school, KnownSets.names(school, drills()), tables)
                .read(DrillFiles.name(file.get()), DrillFiles.bytes(file.get(), ReadingLimits.FILE_BYTES))
                .value()
                .map(Roster::names)
                .orElse(List.of());
    }
}
