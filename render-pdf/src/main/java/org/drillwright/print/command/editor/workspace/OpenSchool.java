package org.drillwright.print.command.editor.workspace;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.filewatch.FileWatcher;
import org.drillwright.print.command.live.LiveDrill;
import org.drillwright.print.command.live.LiveSchool;
import org.drillwright.print.command.live.Snapshot;
import org.drillwright.print.command.planning.PlannedClasses;
import org.drillwright.print.command.printing.chosen.Unprintable;
import org.drillwright.read.ReadingRule;
import org.drillwright.schema.FileForm;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.school.TermFolder;
import org.drillwright.school.Unsaved;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** A school of which some files are open in an editor. */
public final class OpenSchool implements AutoCloseable {

    private final Path root;
    private final LiveSchool school;
    private final Optional<FileWatcher> watcher;
    private final Map<Path, Document> documents = new HashMap<>();
    private List<String> people = List.of();
    private boolean edited;
    private boolean saved;

    private OpenSchool(Path root, LiveSchool school, Optional<FileWatcher> watcher) {
        this.root = root;
        this.school = school;
        this.watcher = watcher;
    }

    /**
     * A school's folder.
     *
     * @param saved told, from another thread, that something of it may have been saved
     */
    static OpenSchool folder(Path root, Runnable saved) throws IOException {
        LiveSchool school = LiveSchool.open(root);
        return new OpenSchool(root, school, Optional.of(FileWatcher.start(root, saved)));
    }

    /** A drill that lies in no school: the usual settings hold, and no other file counts. */
    static OpenSchool alone(Document document) throws IOException {
        Path root = Optional.ofNullable(document.file().getParent()).orElse(document.file());
        LiveSchool school = LiveSchool.of(SchoolFolder.of(root, unsaved(Map.of(document.file(), document))));
        return new OpenSchool(root, school, Optional.empty());
    }

    private static Unsaved unsaved(Map<Path, Document> documents) {
        Map<Path, String> texts = new HashMap<>();
        documents.forEach((file, document) -> {
            if (!document.beyond()) {
                texts.put(file, document.text().text());
            }
        });
        return new Unsaved(texts);
    }

    /** Takes a text; of one that is too long, what its file holds counts as before. */
    void put(Document document) {
        documents.put(document.file(), document);
        edited = true;
    }

    /** @return whether no other file of the school is open */
    boolean drop(Path file) {
        documents.remove(file);
        edited = true;
        return documents.isEmpty();
    }

    void noticeSave() {
        saved = watcher.isPresent();
    }

    public Path root() {
        return root;
    }

    /** The school with every open text as it stands now. */
    public Snapshot now() {
        if (edited) {
            var unused = school.edit(unsaved(documents));
        }
        if (saved) {
            var unused = school.look();
        }
        edited = false;
        saved = false;
        return school.now();
    }

    public SchoolFolder folder() {
        return now().folder();
    }

    public Optional<FileKind> kind(Document document) {
        return FileKind.of(root, document.file());
    }

    /** What a file like this may hold. */
    public Optional<FileForm> form(Document document) {
        return kind(document).flatMap(kind -> switch (kind) {
            case DRILL -> Optional.of(FileForm.ofDrill(folder().school(), folder().titles()));
            case SETTINGS -> Optional.of(FileForm.ofSettings());
            case TERM, ROSTER, CLASS -> ofPeople(kind);
        });
    }

    private Optional<FileForm> ofPeople(FileKind kind) {
        try {
            ClassFolder classes = ClassFolder.open(folder());
            TermFolder terms = TermFolder.open(folder(), classes);
            // A roster that is being written cannot be read half of the time.
            people = classes.roster().isPresent() ? terms.people() : people;
            return Optional.of(
                    switch (kind) {
                        case CLASS -> FileForm.ofClass(classes.classReader(), folder().titles());
                        case ROSTER -> FileForm.ofRoster(classes.rosterReader(), people, terms.titles());
                        default -> FileForm.ofTerm(people, terms.titles());
                    });
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** An open drill, as it was read. */
    public Optional<Entry> entry(Document document) {
        return folder().entries().stream()
                .filter(entry -> entry.file().equals(document.file()))
                .findFirst();
    }

    /** What is found in an open text; of what is read no further nothing. */
    public List<Finding> findings(Document document) {
        return document.beyond() ? List.of(tooLong(document)) : read(document);
    }

    private static Finding tooLong(Document document) {
        return new Finding(
                ReadingRule.TEXT_EMPTY_OR_TOO_LONG.id(),
                Severity.ERROR,
                document.text(),
                Span.at(0),
                Message.of(OpenSchool.class, "too.long", Document.MOST),
                Message.of(OpenSchool.class, "too.long.way"));
    }

    private List<Finding> read(Document document) {
        return kind(document)
                .map(kind -> switch (kind) {
                    case DRILL -> ofDrill(document);
                    case SETTINGS -> in(document, now().folderFindings());
                    case ROSTER, CLASS, TERM -> in(document, ofPeople());
                })
                .orElse(List.of());
    }

    private List<Finding> ofDrill(Document document) {
        Snapshot school = now();
        List<Finding> findings = new ArrayList<>();
        entry(document).ifPresent(entry -> {
            school.sheet(entry.name()).map(LiveDrill::judged).ifPresent(findings::addAll);
            findings.addAll(Unprintable.findings(List.of(entry), school.school(), school::faces));
        });
        return findings;
    }

    private List<Finding> ofPeople() {
        SchoolFolder folder = folder();
        try {
            return folder.isUnjudged() ? List.of() : PlannedClasses.findings(folder);
        } catch (CannotRun unreadable) {
            return List.of();
        }
    }

    private List<Finding> in(Document document, List<Finding> findings) {
        String name = root.relativize(document.file()).toString().replace('\\', '/');
        return findings.stream()
                .filter(finding -> finding.file().name().equals(name))
                .toList();
    }

    @Override
    public void close() {
        watcher.ifPresent(FileWatcher::close);
    }
}
