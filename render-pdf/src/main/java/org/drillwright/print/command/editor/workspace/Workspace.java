package org.drillwright.print.command.editor.workspace;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.school.SchoolFolder;

/** The texts that stand open in an editor, each in its school. Not for several threads. */
public final class Workspace implements AutoCloseable {

    /** What makes a file a drill that lies in no school. */
    private static final Pattern STEPS = Pattern.compile("(?m)^steps:");

    private final Map<String, Opened> open = new HashMap<>();
    private final Map<Path, OpenSchool> schools = new HashMap<>();
    private final Runnable saved;

    /** A text that is open, and its school. */
    public record Opened(Document document, OpenSchool school) {}

    /** @param saved told, from another thread, that a file of a school may have been saved */
    public Workspace(Runnable saved) {
        this.saved = saved;
    }

    /** Takes a text that was opened. One that lies in no school and is no drill is let be. */
    public void open(String uri, Path file, int version, String text) {
        Document document = Document.of(uri, file.toAbsolutePath().normalize(), version, text);
        school(document).ifPresent(school -> put(new Opened(document, school)));
    }

    private void put(Opened opened) {
        open.put(opened.document().uri(), opened);
        opened.school().put(opened.document());
    }

    private Optional<OpenSchool> school(Document document) {
        try {
            Optional<Path> root =
                    Optional.ofNullable(document.file().getParent()).flatMap(SchoolSearch::upward);
            if (root.isEmpty()) {
                boolean drill = STEPS.matcher(document.text().text()).find();
                return drill ? Optional.of(OpenSchool.alone(document)) : Optional.empty();
            }
            OpenSchool known = schools.get(root.get());
            OpenSchool school = known == null ? OpenSchool.folder(root.get(), saved) : known;
            schools.put(root.get(), school);
            return Optional.of(school);
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Takes a text that was changed. */
    public void change(Document document) {
        opened(document.uri()).ifPresent(opened -> put(new Opened(document, opened.school())));
    }

    /** Lets a text go that was closed; its school with the last. */
    public void close(String uri) {
        opened(uri).ifPresent(opened -> {
            open.remove(uri);
            if (opened.school().drop(opened.document().file())) {
                schools.values().remove(opened.school());
                opened.school().close();
            }
        });
    }

    /** The school that a file lies in, be any of its files open or not, as it stands now. */
    public Optional<SchoolFolder> school(Path file) throws IOException {
        Optional<Path> root = Optional.ofNullable(file.getParent()).flatMap(SchoolSearch::upward);
        if (root.isEmpty()) {
            return Optional.empty();
        }
        OpenSchool known = schools.get(root.get());
        return Optional.of(known == null ? SchoolFolder.open(root.get()) : known.folder());
    }

    /** Lets every school look at its folder when it is asked next. */
    public void noticeSave() {
        schools.values().forEach(OpenSchool::noticeSave);
    }

    public Optional<Opened> opened(String uri) {
        return Optional.ofNullable(open.get(uri));
    }

    public List<Opened> all() {
        return List.copyOf(open.values());
    }

    @Override
    public void close() {
        schools.values().forEach(OpenSchool::close);
    }
}
