package org.drillwright.print.command.folder;

import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.source.Nearest;
import org.drillwright.wording.Message;

/** Finds drills by what people call them: a path from where they stand, a path within the school, an id. */
final class DrillSearch {

    private final SchoolFolder school;
    private final Path root;
    private final Path here;

    DrillSearch(SchoolFolder school, Invocation run) {
        this.school = school;
        this.root = Locations.real(school.root());
        this.here = run.here();
    }

    /** The drill of that name, or the drills of that folder; never none. */
    List<Entry> find(String name) {
        Optional<Path> path = path(name);
        List<Entry> found = path.isPresent() ? at(path.get()) : byId(name);
        if (found.isEmpty()) {
            throw new CannotRun(path.map(there -> nothingAt(name, there)).orElseGet(() -> unknown(name)));
        }
        return found;
    }

    /** Whether the name is that of the school's folder, or of its settings. */
    boolean isWhole(String name) {
        return path(name).filter(this::isWhole).isPresent();
    }

    private boolean isWhole(Path path) {
        return path.equals(root) || root.startsWith(path) || path.equals(root.resolve(DrillFiles.SETTINGS));
    }

    private Optional<Path> path(String name) {
        return Locations.existing(here, name)
                .or(() -> Locations.existing(school.root(), name))
                .map(Locations::real);
    }

    private List<Entry> at(Path path) {
        if (isWhole(path)) {
            return school.entries();
        }
        return school.entries().stream()
                .filter(entry -> Locations.real(entry.file()).startsWith(path))
                .toList();
    }

    private List<Entry> byId(String name) {
        String wanted = normal(name);
        return school.entries().stream()
                .filter(entry -> id(entry).equals(wanted))
                .toList();
    }

    private static String id(Entry entry) {
        return normal(DrillFiles.id(entry.file()));
    }

    private static String normal(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC);
    }

    private Message nothingAt(String name, Path path) {
        if (!path.startsWith(root)) {
            return Message.of(DrillSearch.class, "drill-search.is.not.in.the", name, school.root());
        }
        return Files.isDirectory(path)
                ? Message.of(DrillSearch.class, "drill-search.there.is.no.drill", name)
                : Message.of(DrillSearch.class, "drill-search.is.not.a.drill", name);
    }

    private Message unknown(String name) {
        List<String> ids =
                school.entries().stream().map(DrillSearch::id).distinct().toList();
        Message looked = Message.of(DrillSearch.class, "drill-search.there.is.no.file", name, school.root());
        return Nearest.to(normal(name), ids)
                .map(near -> looked.then(Message.of(DrillSearch.class, "drill-search.did.you.mean", near)))
                .orElse(looked);
    }
}
