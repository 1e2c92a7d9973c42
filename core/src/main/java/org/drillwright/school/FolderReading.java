package org.drillwright.school;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.drillwright.check.Folder;
import org.drillwright.check.Subject;
import org.drillwright.check.Surroundings;
import org.drillwright.check.jury.Judge;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.ReadDrill;
import org.drillwright.read.ReadSchool;
import org.drillwright.read.Reading;
import org.drillwright.read.ReadingLimits;
import org.drillwright.read.ReadingRule;
import org.drillwright.read.SchoolReader;
import org.drillwright.reading.TurnReader;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** One opening of one folder, the first or another one. */
final class FolderReading {

    private final Path root;
    private final SchoolFolder.Progress progress;
    private final Optional<SchoolFolder> before;
    private final Unsaved unsaved;
    private final List<Finding> folderFindings = new ArrayList<>();
    private String settingsName = DrillFiles.SETTINGS;
    private Optional<Opened.Settings> settingsRead = Optional.empty();

    /** @param before the same folder as it was read last, if it was */
    FolderReading(Path root, SchoolFolder.Progress progress, Optional<SchoolFolder> before, Unsaved unsaved) {
        this.root = root;
        this.progress = progress;
        this.before = before;
        this.unsaved = unsaved;
    }

    /** Looks through the folder and reads it. */
    SchoolFolder read() throws IOException {
        return read(DrillFiles.find(root), Opened::unchanging);
    }

    /** Reads what was seen in the folder, without a look whether anything was written since. */
    SchoolFolder read(DrillFiles.Found found) throws IOException {
        return read(found, Opened::all);
    }

    private SchoolFolder read(DrillFiles.Found found, Function<Opened, Map<DrillFile, Known>> holding)
            throws IOException {
        Optional<ReadSchool> settings = readSettings();
        School school = settings.map(ReadSchool::school).orElse(School.DEFAULT);
        boolean broken = settings.isEmpty() && !folderFindings.isEmpty();
        Optional<Opened> known = before.map(SchoolFolder::opened)
                .filter(old ->
                        old.judged() && !broken && old.surroundings().school().equals(school));
        List<Known> files =
                files(found.with(root, unsaved), school, known.map(holding).orElse(Map.of()));
        Surroundings surroundings = surroundings(files, school, known);
        List<Known> judged = broken ? files : judged(files, surroundings, known);
        List<Entry> entries = judged.stream().map(FolderReading::entry).toList();
        List<Entry> whole = broken ? entries : withFolderFindings(entries, settings, surroundings);
        return new SchoolFolder(
                root,
                settings,
                SameIds.report(whole),
                folderFindings,
                new Opened(found, settingsRead, surroundings, judged, !broken),
                unsaved);
    }

    private Optional<ReadSchool> readSettings() throws IOException {
        Optional<Path> file = DrillFiles.settings(root, unsaved);
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
                    ReadingRule.IDS_TOO_ALIKE,
                    source,
                    Message.of(FolderReading.class, "settings.other.name"),
                    Message.of(FolderReading.class, "settings.other.name.way", DrillFiles.SETTINGS));
        }
        if (reading.value().isEmpty()) {
            noteOnSettings(
                    ReadingRule.BROKEN_YAML,
                    source,
                    Message.of(FolderReading.class, "not.judged"),
                    Message.of(FolderReading.class, "not.judged.way"));
        }
        return reading.value();
    }

    private void noteOnSettings(ReadingRule rule, SourceFile source, Message what, Message wayOut) {
        folderFindings.add(new Finding(rule.id(), Severity.NOTE, source, Span.at(0), what, wayOut));
    }

    private Reading<ReadSchool> readSchool(Path file) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(unsaved.bytes(file, ReadingLimits.FILE_BYTES));
            Opened.Settings read = before.flatMap(old -> old.opened().settings())
                    .filter(old ->
                            old.name().equals(settingsName) && old.bytes().equals(bytes))
                    .orElseGet(() ->
                            new Opened.Settings(settingsName, bytes, SchoolReader.read(settingsName, bytes.array())));
            settingsRead = Optional.of(read);
            return read.reading();
        } catch (IOException problem) {
            return unopened(settingsName);
        }
    }

    private static <T> Reading<T> unopened(String name) {
        Finding finding = new Finding(
                ReadingRule.NOT_PLAIN_TEXT.id(),
                Severity.ERROR,
                new SourceFile(name, ""),
                Span.at(0),
                Message.of(FolderReading.class, "unopened"),
                Message.of(FolderReading.class, "unopened.way"));
        return new Reading<>(Optional.empty(), List.of(finding));
    }

    /** All drill files, read now or known from before. */
    private List<Known> files(DrillFiles.Found folder, School school, Map<DrillFile, Known> same) {
        OddFiles.note(root, folder.odd()).ifPresent(folderFindings::add);
        OddFiles.warning(root, folder.closed()).ifPresent(folderFindings::add);
        List<DrillFile> found = folder.drills();
        int open = (int) found.stream().filter(file -> !same.containsKey(file)).count();
        DrillReader reader = new DrillReader(school);
        List<Known> files = new ArrayList<>();
        int done = 0;
        for (DrillFile file : found) {
            Known held = same.get(file);
            files.add(held == null ? new Known(file, readDrill(file, reader)) : held);
            if (held == null) {
                progress.read(++done, open);
            }
        }
        return files;
    }

    private Reading<ReadDrill> readDrill(DrillFile file, DrillReader reader) {
        try {
            return reader.read(file.id(), file.name(), unsaved.bytes(file.path(), ReadingLimits.FILE_BYTES));
        } catch (IOException problem) {
            return unopened(file.name());
        }
    }

    private static Surroundings surroundings(List<Known> files, School school, Optional<Opened> known) {
        Map<String, Drill> drills = new LinkedHashMap<>();
        files.stream()
                .flatMap(file -> file.reading().value().stream())
                .forEach(read -> drills.putIfAbsent(read.drill().id(), read.drill()));
        Set<String> unread = files.stream()
                .filter(file -> file.reading().value().isEmpty())
                .map(file -> file.file().id())
                .collect(Collectors.toSet());
        TurnReader reader = known.map(old -> old.surroundings().reader())
                .orElseGet(() -> TurnReader.standard().with(school.words()));
        return new Surroundings(school, reader, drills, unread);
    }

    /** What is known from before holds for a drill on which nothing bears that has changed. */
    private static List<Known> judged(List<Known> files, Surroundings surroundings, Optional<Opened> known) {
        Set<String> touched = known.map(old -> Touched.between(old.surroundings(), surroundings))
                .orElse(Set.of());
        Predicate<Known> holds = file ->
                file.subject().isPresent() && !touched.contains(file.file().id());
        return files.stream()
                .map(file -> holds.test(file) ? file.movedTo(surroundings) : file.judgedIn(surroundings))
                .toList();
    }

    private static Entry entry(Known known) {
        String name = known.file().name();
        List<Finding> all = new ArrayList<>(known.reading().findings());
        all.addAll(known.judged());
        if (name.toLowerCase(Locale.ROOT).endsWith(".yml")) {
            SourceFile source = all.isEmpty()
                    ? known.subject().map(Subject::file).orElseGet(() -> new SourceFile(name, ""))
                    : all.get(0).file();
            all.add(new Finding(
                    ReadingRule.IDS_TOO_ALIKE.id(),
                    Severity.NOTE,
                    source,
                    Span.at(0),
                    Message.of(FolderReading.class, "ends.in.yml"),
                    Message.of(FolderReading.class, "ends.in.yml.way")));
        }
        return new Entry(known.file().path(), name, known.subject(), all);
    }

    /** Findings of the folder rules go to the drill they stand in, or to the folder. */
    private List<Entry> withFolderFindings(
            List<Entry> entries, Optional<ReadSchool> settings, Surroundings surroundings) {
        Folder folder = new Folder(
                surroundings.school(),
                settings.map(ReadSchool::file),
                settings.map(ReadSchool::places).orElseGet(() -> new SourcePlaces(Map.of())),
                entries.stream().flatMap(entry -> entry.subject().stream()).toList(),
                surroundings.unread());
        Map<String, List<Finding>> found = Judge.folder(folder).stream()
                .collect(Collectors.groupingBy(finding -> finding.file().name()));
        folderFindings.addAll(found.getOrDefault(settingsName, List.of()));
        return entries.stream()
                .map(entry -> entry.with(found.getOrDefault(entry.name(), List.of())))
                .toList();
    }
}
