package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.check.Folder;
import org.drillwright.check.Judge;
import org.drillwright.check.Subject;
import org.drillwright.check.Surroundings;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.notation.Vocabulary;
import org.drillwright.plan.roster.Habits;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.ReadingRule;
import org.drillwright.read.SchoolReader;
import org.drillwright.source.Finding;
import org.drillwright.source.Places;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;

/**
 * A folder of drills, read and judged.
 *
 * <pre>{@code
 * SchoolFolder folder = SchoolFolder.open(Path.of("drills"));
 * folder.findings().forEach(finding -> show(finding));
 * }</pre>
 */
public final class SchoolFolder {

    private final Path root;
    private final Optional<ReadSchool> settings;
    private final School school;
    private final List<Entry> entries;
    private final List<Finding> folderFindings;

    /**
     * A file of the folder and what came of it.
     *
     * @param file where it lies
     * @param name as it is shown
     * @param subject the drill, if all of the file could be read
     * @param findings what reading and the rules found in it
     */
    public record Entry(Path file, String name, Optional<Subject> subject, List<Finding> findings) {

        public Entry {
            findings = List.copyOf(findings);
        }

        /** Whether there is a drill, and no error in it. */
        public boolean isSound() {
            return subject.isPresent() && findings.stream().noneMatch(finding -> finding.severity() == Severity.ERROR);
        }

        private Entry with(List<Finding> more) {
            List<Finding> all = new ArrayList<>(findings);
            all.addAll(more);
            return new Entry(file, name, subject, all);
        }
    }

    /** Told of each file as it is read. */
    @FunctionalInterface
    public interface Progress {
        /** @param done files read so far, of {@code all} */
        void read(int done, int all);
    }

    private SchoolFolder(
            Path root,
            Optional<ReadSchool> settings,
            School school,
            List<Entry> entries,
            List<Finding> folderFindings) {
        this.root = root;
        this.settings = settings;
        this.school = school;
        this.entries = List.copyOf(entries);
        this.folderFindings = List.copyOf(folderFindings);
    }

    /** Reads and judges a folder; problems of its files are findings. */
    public static SchoolFolder open(Path root) throws IOException {
        return open(root, (done, all) -> {});
    }

    /**
     * Reads and judges a folder.
     *
     * @throws IOException if the folder itself cannot be listed
     */
    public static SchoolFolder open(Path root, Progress progress) throws IOException {
        return new FolderReading(root, progress).read();
    }

    public Path root() {
        return root;
    }

    /** The settings in force. */
    public School school() {
        return school;
    }

    /** What holds for all classes of the school. */
    public Habits habits() {
        return settings.map(ReadSchool::habits).orElse(Habits.USUAL);
    }

    /** The settings as they were read, if the folder has a file of them. */
    public Optional<ReadSchool> settings() {
        return settings;
    }

    /** The drill files in the order of their names. */
    public List<Entry> entries() {
        return entries;
    }

    /** The drill of that id, if it could be read. */
    public Optional<Entry> entry(String id) {
        return entries.stream()
                .filter(entry -> DrillFiles.id(entry.file()).equals(Normalizer.normalize(id, Normalizer.Form.NFC)))
                .findFirst();
    }

    /** The drills of a set in teaching order; ids that could not be read are left out. */
    public List<Entry> entriesOf(DrillSet set) {
        return idsOf(set).stream().flatMap(id -> entry(id).stream()).toList();
    }

    /**
     * The ids of a set's drills in teaching order: each behind those it needs, else as they are listed; where they are
     * not listed, by level. Ids that a set lists and the folder does not have stay in.
     */
    public List<String> idsOf(DrillSet set) {
        Map<String, Drill> drills = new LinkedHashMap<>();
        entries.stream()
                .flatMap(entry -> entry.subject().stream())
                .forEach(subject -> drills.putIfAbsent(subject.drill().id(), subject.drill()));
        List<String> ids = set.isListed()
                ? set.drills()
                : drills.values().stream()
                        .filter(set::holds)
                        .sorted(Comparator.comparingInt(drill -> school.rank(drill.level())))
                        .map(Drill::id)
                        .toList();
        return new TeachingOrder(drills).of(ids);
    }

    /** Whether the settings have errors, so that nothing could be judged. */
    public boolean isUnjudged() {
        return settings.isEmpty() && folderFindings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** Findings in the settings and about the folder as a whole. */
    public List<Finding> folderFindings() {
        return folderFindings;
    }

    /** All findings: the folder's, then file by file. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(folderFindings);
        entries.forEach(entry -> all.addAll(entry.findings()));
        return all;
    }

    /** One opening of one folder. */
    private static final class FolderReading {

        private final Path root;
        private final Progress progress;
        private final List<Finding> folderFindings = new ArrayList<>();
        private String settingsName = DrillFiles.SETTINGS;

        FolderReading(Path root, Progress progress) {
            this.root = root;
            this.progress = progress;
        }

        SchoolFolder read() throws IOException {
            Optional<ReadSchool> settings = readSettings();
            School school = settings.map(ReadSchool::school).orElse(School.DEFAULT);
            boolean broken = settings.isEmpty() && !folderFindings.isEmpty();
            DrillFiles.Found found = DrillFiles.find(root);
            List<Path> files = found.drills();
            OddFiles.note(root, found.odd()).ifPresent(folderFindings::add);
            OddFiles.warning(root, found.closed()).ifPresent(folderFindings::add);
            DrillReader reader = new DrillReader(school);
            Map<Path, Reading<ReadDrill>> readings = new LinkedHashMap<>();
            for (Path file : files) {
                readings.put(file, readDrill(file, reader));
                progress.read(readings.size(), files.size());
            }
            List<Entry> entries = broken ? unjudged(readings) : judged(readings, settings, school);
            return new SchoolFolder(root, settings, school, SameIds.report(entries), folderFindings);
        }

        private Optional<ReadSchool> readSettings() throws IOException {
            Optional<Path> file = DrillFiles.settings(root);
            if (file.isEmpty()) {
                OddFiles.find(root, List.of(DrillFiles.SETTINGS)).ifPresent(folderFindings::add);
                return Optional.empty();
            }
            settingsName = DrillFiles.name(file.get());
            Reading<ReadSchool> reading = readSchool(file.get());
            folderFindings.addAll(reading.findings());
            SourceFile source = reading.value()
                    .map(ReadSchool::file)
                    .orElseGet(() -> reading.findings().get(0).file());
            if (!settingsName.equals(DrillFiles.SETTINGS)) {
                noteOnSettings(
                        ReadingRule.OWN_ID,
                        source,
                        "These were read as the school's settings.",
                        "Rename the file to " + DrillFiles.SETTINGS + ", so that every computer finds it.");
            }
            if (reading.value().isEmpty()) {
                noteOnSettings(
                        ReadingRule.YAML_SYNTAX,
                        source,
                        "The drills were read, but not judged.",
                        "Mend the settings first; the rules depend on them.");
            }
            return reading.value();
        }

        private void noteOnSettings(ReadingRule rule, SourceFile source, String what, String wayOut) {
            folderFindings.add(new Finding(rule.id(), Severity.NOTE, source, Span.at(0), what, wayOut));
        }

        private Reading<ReadSchool> readSchool(Path file) {
            try {
                return SchoolReader.read(settingsName, bytes(file));
            } catch (IOException problem) {
                return unopened(settingsName);
            }
        }

        private static <T> Reading<T> unopened(String name) {
            Finding finding = new Finding(
                    ReadingRule.PLAIN_TEXT.id(),
                    Severity.ERROR,
                    new SourceFile(name, ""),
                    Span.at(0),
                    "This file could not be opened.",
                    "Is it still there, and may you read it?");
            return new Reading<>(Optional.empty(), List.of(finding));
        }

        private Reading<ReadDrill> readDrill(Path file, DrillReader reader) {
            String name = DrillFiles.shown(root, file);
            try {
                return reader.read(DrillFiles.id(file), name, bytes(file));
            } catch (IOException problem) {
                return unopened(name);
            }
        }

        /** As much of a file as the reader wants to see: one byte more than it accepts. */
        private static byte[] bytes(Path file) throws IOException {
            try (var in = Files.newInputStream(file)) {
                return in.readNBytes(ReadingLimits.FILE_BYTES + 1);
            }
        }

        private List<Entry> unjudged(Map<Path, Reading<ReadDrill>> readings) {
            return readings.entrySet().stream()
                    .map(entry -> entry(
                            entry.getKey(), Optional.empty(), entry.getValue().findings()))
                    .toList();
        }

        private List<Entry> judged(
                Map<Path, Reading<ReadDrill>> readings, Optional<ReadSchool> settings, School school) {
            Surroundings surroundings = surroundings(readings, school);
            List<Entry> entries = new ArrayList<>();
            for (Map.Entry<Path, Reading<ReadDrill>> reading : readings.entrySet()) {
                Optional<Subject> subject = reading.getValue()
                        .value()
                        .map(read -> new Subject(read.drill(), read.file(), read.places(), surroundings));
                List<Finding> findings = new ArrayList<>(reading.getValue().findings());
                subject.ifPresent(one -> findings.addAll(Judge.drill(one)));
                entries.add(entry(reading.getKey(), subject, findings));
            }
            return withFolderFindings(entries, settings, surroundings);
        }

        private static Surroundings surroundings(Map<Path, Reading<ReadDrill>> readings, School school) {
            Map<String, Drill> drills = new LinkedHashMap<>();
            readings.values().stream()
                    .flatMap(reading -> reading.value().stream())
                    .forEach(read -> drills.putIfAbsent(read.drill().id(), read.drill()));
            return new Surroundings(school, Vocabulary.standard().with(school.words()), drills, unread(readings));
        }

        private static Set<String> unread(Map<Path, Reading<ReadDrill>> readings) {
            return readings.entrySet().stream()
                    .filter(reading -> reading.getValue().value().isEmpty())
                    .map(reading -> Normalizer.normalize(DrillFiles.id(reading.getKey()), Normalizer.Form.NFC))
                    .collect(Collectors.toSet());
        }

        /** Findings of the folder rules go to the drill they stand in, or to the folder. */
        private List<Entry> withFolderFindings(
                List<Entry> entries, Optional<ReadSchool> settings, Surroundings surroundings) {
            Folder folder = new Folder(
                    surroundings.school(),
                    settings.map(ReadSchool::file),
                    settings.map(ReadSchool::places).orElseGet(() -> new Places(Map.of())),
                    entries.stream().flatMap(entry -> entry.subject().stream()).toList(),
                    surroundings.unread());
            Map<String, List<Finding>> found = Judge.folder(folder).stream()
                    .collect(Collectors.groupingBy(finding -> finding.file().name()));
            folderFindings.addAll(found.getOrDefault(settingsName, List.of()));
            return entries.stream()
                    .map(entry -> entry.with(found.getOrDefault(entry.name(), List.of())))
                    .toList();
        }

        private Entry entry(Path file, Optional<Subject> subject, List<Finding> findings) {
            String name = DrillFiles.shown(root, file);
            List<Finding> all = new ArrayList<>(findings);
            if (name.toLowerCase(Locale.ROOT).endsWith(".yml")) {
                SourceFile source = findings.isEmpty()
                        ? subject.map(Subject::file).orElseGet(() -> new SourceFile(name, ""))
                        : findings.get(0).file();
                all.add(new Finding(
                        ReadingRule.OWN_ID.id(),
                        Severity.NOTE,
                        source,
                        Span.at(0),
                        "This file ends in .yml; it was read like one that ends in .yaml.",
                        "Rename it, so that all drills end alike."));
            }
            return new Entry(file, name, subject, all);
        }
    }
}
