package org.drillwright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.school.SchoolFolder;

/** The drills of the example school, read and played. */
public final class Example {

    private static final Path FOLDER = Path.of("..", "drills");

    private Example() {}

    /** Held here, so that the folder is read when first asked for. */
    private static final class Shared {
        private static final SchoolFolder SCHOOL = open();

        private static SchoolFolder open() {
            try {
                return SchoolFolder.open(FOLDER);
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        }
    }

    public static List<Subject> drills() {
        return Shared.SCHOOL.entries().stream()
                .map(SchoolFolder.Entry::subject)
                .flatMap(Optional::stream)
                .toList();
    }

    public static Subject drill(String id) {
        return drills().stream()
                .filter(drill -> drill.drill().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** A copy of the school with its class, for commands that keep what they planned. */
    public static Path copyTo(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            for (Path file : files.filter(Example::isOfTheSchool).toList()) {
                Path copy = folder.resolve(FOLDER.relativize(file).toString());
                Files.createDirectories(Objects.requireNonNull(copy.getParent()));
                Files.copy(file, copy);
            }
        }
        return folder;
    }

    private static boolean isOfTheSchool(Path file) {
        String inside = FOLDER.relativize(file).toString();
        return (inside.endsWith(".yaml") || inside.endsWith(".csv"))
                && !inside.startsWith("target")
                && !inside.startsWith("src")
                && !inside.startsWith("classes/plans");
    }

    /** The drill's card, with pictures. */
    public static CardSubject card(Subject drill) {
        return new CardSubject(
                drill.drill(), drill.school(), Optional.empty(), false, List.of(), Optional.of(drill.replay()));
    }
}
