package org.drillwright.school;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.Drill;
import org.drillwright.model.DrillSet;
import org.drillwright.model.School;
import org.drillwright.model.Shelves;
import org.drillwright.plan.roster.Habits;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadSchool;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.table.TableSettings;

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
    private final Opened opened;
    private final Unsaved unsaved;
    private final Map<String, Entry> byId = new HashMap<>();
    private final Map<String, Drill> drills = new LinkedHashMap<>();
    private final Shelves shelves;
    private final TeachingOrder order;

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

        /** Whether there is a drill, and no value of it was lost in reading. */
        public boolean isWhole() {
            return subject.map(drill -> drill.places().lost().isEmpty()).orElse(false);
        }

        /** The same with more findings behind its own. */
        Entry with(List<Finding> more) {
            if (more.isEmpty()) {
                return this;
            }
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

    SchoolFolder(
            Path root,
            Optional<ReadSchool> settings,
            List<Entry> entries,
            List<Finding> folderFindings,
            Opened opened,
            Unsaved unsaved) {
        this.root = root;
        this.settings = settings;
        this.school = opened.surroundings().school();
        this.entries = List.copyOf(entries);
        this.folderFindings = List.copyOf(folderFindings);
        this.opened = opened;
        this.unsaved = unsaved;
        for (Entry entry : entries) {
            byId.putIfAbsent(DrillFiles.id(entry.file()), entry);
            entry.subject()
                    .ifPresent(subject -> drills.putIfAbsent(subject.drill().id(), subject.drill()));
        }
        this.shelves = new Shelves(drills.values());
        this.order = new TeachingOrder(drills);
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
        return new FolderReading(root, progress, Optional.empty(), Unsaved.NONE).read();
    }

    /**
     * Reads and judges texts that are not saved, as if they were all that their folder holds.
     *
     * @param root where they would be saved
     * @throws IOException if the folder itself cannot be listed
     */
    public static SchoolFolder of(Path root, Unsaved texts) throws IOException {
        return new FolderReading(root, (done, all) -> {}, Optional.empty(), texts).read(DrillFiles.Found.NOTHING);
    }

    /**
     * Reads the folder again: only the files that look different from when this was read, and those written so shortly
     * before it that they might look the same. Only the drills on which that bears are judged again. What comes of it
     * is what {@link #open} gives.
     *
     * @param progress told of the files that are read, which may be none
     * @throws IOException if the folder itself cannot be listed
     */
    public SchoolFolder again(Progress progress) throws IOException {
        return new FolderReading(root, progress, Optional.of(this), unsaved).read();
    }

    /**
     * The same with other texts that are not saved; the folder is not looked at again. Only the drills on which the texts
     * bear are read and judged.
     *
     * @param texts all of them, in place of those from before
     * @throws IOException if the folder itself cannot be listed
     */
    public SchoolFolder with(Unsaved texts) throws IOException {
        return new FolderReading(root, (done, all) -> {}, Optional.of(this), texts).read(opened.found());
    }

    Unsaved unsaved() {
        return unsaved;
    }

    Opened opened() {
        return opened;
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

    /** What the school says of its tables. */
    public TableSettings tables() {
        return settings.map(ReadSchool::tables).orElse(TableSettings.NONE);
    }

    /** The settings as they were read, if the folder has a file of them. */
    public Optional<ReadSchool> settings() {
        return settings;
    }

    /** The drill files in the order of their names. */
    public List<Entry> entries() {
        return entries;
    }

    /** The drills' ids, in the order of their files, each with its drill's title, which is empty while it cannot be read. */
    public Map<String, String> titles() {
        Map<String, String> titles = new LinkedHashMap<>();
        entries()
                .forEach(entry -> titles.putIfAbsent(
                        DrillFiles.id(entry.file()),
                        entry.subject().map(subject -> subject.drill().title()).orElse("")));
        return titles;
    }

    /** The drill of that id, if it could be read. */
    public Optional<Entry> entry(String id) {
        return Optional.ofNullable(byId.get(Normalizer.normalize(id, Normalizer.Form.NFC)));
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
        List<String> ids = set.isListed()
                ? set.drills()
                : shelves.drills(set).stream()
                        .sorted(Comparator.comparingInt(drill -> school.rank(drill.level())))
                        .map(Drill::id)
                        .toList();
        return order.of(ids);
    }

    /** Whether the settings have errors, so that nothing could be judged. */
    public boolean isUnjudged() {
        return settings.isEmpty() && folderFindings.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
    }

    /** Findings in the settings and about the folder as a whole. */
    public List<Finding> folderFindings() {
        return folderFindings;
    }

    /** The drill that a file of this folder would be with another text; none if it could not be read. */
    public Optional<Subject> drill(Path file, String text) {
        return new DrillReader(school)
                .read(DrillFiles.id(file), DrillFiles.shownFrom(root, file), text.getBytes(StandardCharsets.UTF_8))
                .value()
                .map(read -> new Subject(read.drill(), read.file(), read.places(), opened.surroundings()));
    }

    /** All findings: the folder's, then file by file. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(folderFindings);
        entries.forEach(entry -> all.addAll(entry.findings()));
        return all;
    }
}
