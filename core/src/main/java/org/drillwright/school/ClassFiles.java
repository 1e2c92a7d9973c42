package org.drillwright.school;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Where a school keeps its people, its classes, its terms, its record and its translations: beside the settings, and in folders
 * of their own.
 */
public final class ClassFiles {

    /** The folder in which each file is a class. */
    public static final String CLASSES = "classes";

    /** The folder in that of the classes, or of the terms, where plans are kept that were printed or published. */
    static final String PLANS = "plans";

    /** The folder in which each file is a term. */
    public static final String TERMS = "terms";

    /** The folder in which each file is the school's words in one language. */
    public static final String TRANSLATIONS = "translations";

    /** The file of past classes. */
    public static final String RECORD = "record.csv";

    static final String ROSTER = "roster.yaml";
    /** The roster as a spreadsheet writes it. */
    public static final String ROSTER_TABLE = "roster.csv";

    static final List<String> ROSTERS = List.of(ROSTER, "roster.yml", ROSTER_TABLE);

    private ClassFiles() {}

    /** Whether a folder is that of the classes, of the terms or of the translations. */
    static boolean isClasses(Path root, Path folder) {
        String name = DrillFiles.name(folder);
        return root.equals(folder.getParent())
                && Stream.of(CLASSES, TERMS, TRANSLATIONS).anyMatch(name::equalsIgnoreCase);
    }

    /**
     * Whether a path is the roster, the record, the folder of the classes, of the terms or of the translations, or a file
     * below these.
     */
    public static boolean isBesideDrills(Path root, Path path) {
        return isRoster(root, path)
                || path.equals(root.resolve(RECORD))
                || (path.startsWith(root)
                        && !path.equals(root)
                        && isClasses(root, root.resolve(root.relativize(path).getName(0))));
    }

    static boolean isRoster(Path root, Path file) {
        return root.equals(file.getParent())
                && ROSTERS.contains(DrillFiles.name(file).toLowerCase(Locale.ROOT));
    }

    /** The rosters of a school, the one that is read first; there should be one or none. */
    static List<Path> rosters(Path root) throws IOException {
        return files(root, file -> isRoster(root, file)).stream()
                .sorted(Comparator.comparingInt(
                        file -> ROSTERS.indexOf(DrillFiles.name(file).toLowerCase(Locale.ROOT))))
                .toList();
    }

    static Optional<Path> record(Path root) {
        return Optional.of(root.resolve(RECORD)).filter(Files::isRegularFile);
    }

    /** The classes by name. */
    static List<Path> classes(Path root) throws IOException {
        return yaml(root.resolve(CLASSES));
    }

    /** The terms by name. */
    static List<Path> terms(Path root) throws IOException {
        return yaml(root.resolve(TERMS));
    }

    /** The translations by name. */
    static List<Path> translations(Path root) throws IOException {
        return yaml(root.resolve(TRANSLATIONS));
    }

    /** The plans that were kept; their names begin with their day. */
    static List<Path> plans(Path root) throws IOException {
        return yaml(root.resolve(CLASSES).resolve(PLANS));
    }

    /** The plans of terms that were published; their names begin with that of their term. */
    static List<Path> published(Path root) throws IOException {
        return yaml(root.resolve(TERMS).resolve(PLANS));
    }

    private static List<Path> yaml(Path folder) throws IOException {
        return Files.isDirectory(folder) ? files(folder, ClassFiles::isYaml) : List.of();
    }

    static boolean isYaml(Path file) {
        String name = DrillFiles.name(file).toLowerCase(Locale.ROOT);
        return (name.endsWith(".yaml") || name.endsWith(".yml")) && !name.startsWith(".");
    }

    private static List<Path> files(Path folder, Predicate<Path> wanted) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> Files.isRegularFile(file) && wanted.test(file))
                    .sorted()
                    .toList();
        }
    }
}
