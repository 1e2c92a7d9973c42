package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.mark.PlanMark;
import org.drillwright.model.Drill;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.ClassReader;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.ReadingRule;
import org.drillwright.read.RosterReader;
import org.drillwright.register.History;
import org.drillwright.register.Members;
import org.drillwright.register.ReadHistory;
import org.drillwright.register.RecordAround;
import org.drillwright.register.RecordReader;
import org.drillwright.register.Together;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/**
 * The people of a school, its classes and its record, as they lie beside its drills.
 *
 * <pre>{@code
 * ClassFolder classes = ClassFolder.open(SchoolFolder.open(Path.of("drills")));
 * classes.read(classes.named("tonight").orElseThrow());
 * }</pre>
 */
public final class ClassFolder {

    private final SchoolFolder school;
    private final Optional<Roster> roster;
    private final ReadHistory record;
    private final List<Path> classes;
    private final List<Finding> findings;

    private ClassFolder(
            SchoolFolder school,
            Optional<Roster> roster,
            ReadHistory record,
            List<Path> classes,
            List<Finding> findings) {
        this.school = school;
        this.roster = roster;
        this.record = record;
        this.classes = List.copyOf(classes);
        this.findings = List.copyOf(findings);
    }

    /**
     * Reads roster and record; what is wrong with them is a finding.
     *
     * @throws IOException if a file that is there cannot be read
     */
    public static ClassFolder open(SchoolFolder school) throws IOException {
        List<Path> rosters = ClassFiles.rosters(school.root());
        List<Finding> findings = new ArrayList<>();
        Optional<Roster> roster = Optional.of(Roster.EMPTY);
        if (!rosters.isEmpty()) {
            Reading<Roster> reading = new RosterReader(
                            school.school(), KnownSets.names(school.school(), ids(school)), school.tables())
                    .read(
                            DrillFiles.name(rosters.get(0)),
                            school.unsaved().bytes(rosters.get(0), ReadingLimits.FILE_BYTES));
            findings.addAll(reading.findings());
            roster = reading.value().map(read -> KnownSets.spelledOut(read, school));
            rosters.stream().skip(1).forEach(more -> findings.add(second(more, rosters.get(0))));
        }
        OddFiles.find(school.root(), ClassFiles.ROSTERS).ifPresent(findings::add);
        roster = findings.stream().anyMatch(OddFiles::isOdd) ? Optional.empty() : roster;
        ReadHistory record = record(school, roster);
        findings.addAll(record.findings());
        return new ClassFolder(school, roster, record, ClassFiles.classes(school.root()), findings);
    }

    private static ReadHistory record(SchoolFolder school, Optional<Roster> roster) throws IOException {
        Optional<Path> file = ClassFiles.record(school.root());
        Optional<Finding> odd = OddFiles.find(school.root(), List.of(ClassFiles.RECORD));
        if (odd.isPresent()) {
            return ReadHistory.nothing(List.of(odd.get()));
        }
        if (file.isEmpty() || roster.isEmpty()) {
            return ReadHistory.nothing(List.of());
        }
        return RecordReader.read(
                ClassFiles.RECORD, DrillFiles.bytes(file.get(), RecordReader.MOST_BYTES), around(school, roster.get()));
    }

    private static RecordAround around(SchoolFolder school, Roster roster) {
        return new RecordAround(Set.copyOf(roster.names()), roster.former(), Set.copyOf(ids(school)), school.tables());
    }

    private static Finding second(Path more, Path first) {
        return new Finding(
                ReadingRule.IDS_TOO_ALIKE.id(),
                Severity.WARNING,
                new SourceFile(DrillFiles.name(more), ""),
                Span.at(0),
                Message.of(ClassFolder.class, "roster.second", DrillFiles.name(first)),
                Message.of(ClassFolder.class, "roster.second.way"));
    }

    private static List<String> ids(SchoolFolder school) {
        return school.entries().stream()
                .map(entry -> DrillFiles.id(entry.file()))
                .toList();
    }

    /** The people, those who left as being away; nothing if the roster has an error, nobody if there is no roster. */
    public Optional<Roster> roster() {
        return roster.map(read -> read.without(record.members().gone()));
    }

    /** The roster's file, if there is one. */
    public Optional<Path> rosterFile() throws IOException {
        return ClassFiles.rosters(school.root()).stream().findFirst();
    }

    /** Reads a roster's text as this school's own was. */
    public RosterReader rosterReader() {
        return new RosterReader(school.school(), KnownSets.names(school.school(), ids(school)), school.tables());
    }

    /** Who was renamed, and who left. */
    public Members members() {
        return record.members();
    }

    /** What two who train on their own have told. */
    public Together together() {
        return record.together();
    }

    /** How somebody who had a name on a day is called now. */
    public String now(String name, LocalDate date) {
        String now = record.members().now(name, date);
        Roster people = roster.orElse(Roster.EMPTY);
        return people.names().contains(now) ? now : people.former().getOrDefault(now, now);
    }

    /** What is on record. */
    public History history() {
        return record.history();
    }

    /** What a record tells, read as this school's own was; of what has become of it since it was opened. */
    public ReadHistory record(byte[] bytes) {
        return RecordReader.read(ClassFiles.RECORD, bytes, around(school, roster.orElse(Roster.EMPTY)));
    }

    /** Whether what lies in the record's place is no record, so that nothing may be added to it. */
    public boolean isRecordBroken() {
        return record.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** Where the record lies, be it there or not. */
    public Path recordFile() {
        return school.root().resolve(ClassFiles.RECORD);
    }

    /** The names of the classes in the school's folder. */
    public List<String> names() {
        return classes.stream().map(DrillFiles::id).toList();
    }

    /** The file of a class in the school's folder. */
    public Optional<Path> named(String name) {
        return classes.stream()
                .filter(file -> DrillFiles.id(file).equals(name)
                        || DrillFiles.name(file).equals(name))
                .findFirst();
    }

    /** Reads a class as one of this school. */
    public ClassReader classReader() {
        return new ClassReader(school.school(), school.habits(), roster().orElse(Roster.EMPTY), ids(school));
    }

    /** Reads one class, wherever it lies; the roster must have been read. */
    public Reading<ClassBrief> read(Path file) throws IOException {
        return classReader()
                .read(
                        DrillFiles.shownFrom(school.root(), file),
                        school.unsaved().bytes(file, ReadingLimits.FILE_BYTES));
    }

    /** The plans of a class and day that were kept; one that isn't whole, or no longer what its mark stands for, is a finding. */
    public ReadPlans plans(String named, LocalDate date) throws IOException {
        return PlanFiles.read(school.root(), named, date);
    }

    /** Where a plan is kept, be it there or not. */
    public Path planFile(LocalDate date, PlanMark mark) {
        return PlanFiles.file(school.root(), date, mark);
    }

    /** Whether a plan of any class and day has a mark. */
    public boolean isTaken(PlanMark mark) throws IOException {
        return PlanFiles.isTaken(school.root(), mark);
    }

    /** A few figures of what a plan is made from: the same as long as nothing of it changes. */
    public Map<String, String> figures(Path klass) throws IOException {
        return PlanFiles.figures(school.root(), klass);
    }

    /** Findings of the roster and the record. */
    public List<Finding> findings() {
        return findings;
    }

    /** Findings of all classes in the folder, file by file; none while the roster has an error. */
    public List<Finding> classFindings() throws IOException {
        List<Finding> all = new ArrayList<>();
        if (roster.isPresent()) {
            for (Path file : classes) {
                all.addAll(read(file).findings());
            }
        }
        return all;
    }

    /** Findings of all plans that were kept: one that can't be read, or is no longer what its mark stands for. */
    public List<Finding> planFindings() throws IOException {
        return PlanFiles.findings(school.root());
    }

    /** The drills that can be taught, by id, in the order of their files. */
    public Map<String, Drill> drills() {
        Map<String, Drill> drills = new LinkedHashMap<>();
        school.entries()
                .forEach(entry -> entry.subject()
                        .ifPresent(subject -> drills.putIfAbsent(subject.drill().id(), subject.drill())));
        return drills;
    }
}
