package org.drillwright.print.command.folder;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.school.DrillFiles;
import org.drillwright.wording.Message;

/**
 * Finds the folder of the school: the one that is named, or the nearest upward with settings in it, or the only one just
 * below with settings in it, or the place itself.
 */
public final class SchoolSearch {

    private final Invocation run;

    public SchoolSearch(Invocation run) {
        this.run = run;
    }

    /**
     * The school that a command is meant for.
     *
     * @param named the folder named by {@code --school}
     * @param drills paths or ids; the first that is a path is where the search begins
     */
    public Path find(Optional<String> named, List<String> drills) {
        if (named.isPresent()) {
            return existing(named.get());
        }
        return drills.stream()
                .flatMap(drill -> Locations.existing(run.here(), drill).stream())
                .findFirst()
                .map(path -> around(Files.isDirectory(path) ? path : Locations.folderOf(path)))
                .orElseGet(() -> around(run.here()));
    }

    /**
     * The school to talk about with who started the program without a command: here, or where it was unpacked; but who
     * stands in an empty folder means to begin in it.
     */
    public Path findForTalk(Optional<String> named) {
        if (named.isPresent()) {
            return existing(named.get());
        }
        return upward(run.here())
                .or(() -> isEmpty(run.here()) ? Optional.of(run.here()) : Optional.empty())
                .or(() -> run.home().flatMap(home -> upward(home).or(() -> below(home))))
                .orElseGet(() -> around(run.here()));
    }

    /** A folder that was named, which must be there. */
    public Path existing(String folder) {
        return Locations.existing(run.here(), folder)
                .filter(Files::isDirectory)
                .orElseThrow(() ->
                        new CannotRun(Message.of(SchoolSearch.class, "school-search.there.is.no.folder", folder)));
    }

    private static Path around(Path folder) {
        return upward(folder).or(() -> below(folder)).orElse(folder);
    }

    /** The nearest folder upward, this one among them, that holds the settings of a school. */
    public static Optional<Path> upward(Path folder) {
        return Stream.iterate(Optional.of(folder), Optional::isPresent, at -> at.map(Path::getParent))
                .flatMap(Optional::stream)
                .filter(SchoolSearch::hasSettings)
                .findFirst();
    }

    private static Optional<Path> below(Path folder) {
        try (Stream<Path> children = Files.list(folder)) {
            List<Path> schools =
                    children.filter(SchoolSearch::hasSettings).limit(2).toList();
            return schools.size() == 1 ? Optional.of(schools.get(0)) : Optional.empty();
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    private static boolean isEmpty(Path folder) {
        try (Stream<Path> children = Files.list(folder)) {
            return children.findAny().isEmpty();
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static boolean hasSettings(Path folder) {
        return Files.isRegularFile(folder.resolve(DrillFiles.SETTINGS));
    }
}
