package org.drillwright.school;

import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.read.ReadingLimits;

/** Finds the drill files of a folder: all that end in .yaml or .yml, but for the settings, the roster, the classes and the terms. */
public final class DrillFiles {

    /** The file that holds a school's settings. */
    public static final String SETTINGS = "school.yaml";

    /** Folders inside one another that are looked into. */
    public static final int DEPTH = 8;

    /** Folders that programs fill, and hidden ones, hold no drills. */
    private static final Set<String> PASSED_OVER = Set.of("target");

    private DrillFiles() {}

    /** As much of a file as its reader wants to see: one byte more than it accepts. */
    static byte[] bytes(Path file, int most) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return in.readNBytes(most + 1);
        }
    }

    /**
     * What was found below a folder, by name.
     *
     * @param drills the drill files, and those that could not be looked at
     * @param odd what is named like a drill and is no file: links, which are not followed, pipes, devices
     * @param closed folders that could not be looked into
     */
    record Found(List<DrillFile> drills, List<Path> odd, List<Path> closed) {

        static final Found NOTHING = new Found(List.of(), List.of(), List.of());

        /** The same with texts that are not saved, those among them that have no file yet. */
        Found with(Path root, Unsaved unsaved) {
            Set<Path> there = drills.stream().map(DrillFile::path).collect(Collectors.toSet());
            Stream<DrillFile> fresh = unsaved.files(root).stream()
                    .filter(file -> isDrill(root, file) && !there.contains(file))
                    .map(file -> new DrillFile(file, shown(root, file), Optional.empty()));
            List<DrillFile> all = Stream.concat(drills.stream(), fresh)
                    .map(file -> file.with(unsaved))
                    .sorted(Comparator.comparing(DrillFile::name))
                    .toList();
            return new Found(all, odd, closed);
        }
    }

    /** The drill files below a folder, by name; links are not followed. */
    public static List<DrillFile> below(Path root) throws IOException {
        return find(root).drills();
    }

    /**
     * Looks through a folder.
     *
     * @throws IOException if it cannot be listed, or holds more drill files than {@link ReadingLimits#DRILLS}
     */
    static Found find(Path root) throws IOException {
        List<DrillFile> found = new ArrayList<>();
        List<Path> odd = new ArrayList<>();
        List<Path> closed = new ArrayList<>();
        Files.walkFileTree(root, EnumSet.noneOf(FileVisitOption.class), DEPTH, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
                boolean passedOver =
                        (!folder.equals(root) && isPassedOver(name(folder))) || ClassFiles.isClasses(root, folder);
                return passedOver ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                if (!isDrill(name(file)) || ClassFiles.isRoster(root, file) || attributes.isDirectory()) {
                    return FileVisitResult.CONTINUE;
                }
                if (!attributes.isRegularFile()) {
                    odd.add(file);
                } else if (found.size() < ReadingLimits.DRILLS) {
                    found.add(new DrillFile(file, shown(root, file), Optional.of(Stamp.of(attributes))));
                } else {
                    throw new TooManyDrills();
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException problem) {
                if (Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS)) {
                    closed.add(file);
                } else if (isDrill(name(file))) {
                    found.add(new DrillFile(file, shown(root, file), Optional.empty()));
                }
                return FileVisitResult.CONTINUE;
            }
        });
        Comparator<Path> byName = Comparator.comparing(file -> shown(root, file));
        found.sort(Comparator.comparing(DrillFile::name));
        odd.sort(byName);
        closed.sort(byName);
        return new Found(found, odd, closed);
    }

    private static boolean isPassedOver(String folder) {
        return folder.startsWith(".") || PASSED_OVER.contains(folder);
    }

    /** Whether a file below a folder would be read as a drill of it. */
    static boolean isDrill(Path root, Path file) {
        Path folder = file.getParent();
        while (folder != null && !folder.equals(root)) {
            if (isPassedOver(name(folder)) || ClassFiles.isClasses(root, folder)) {
                return false;
            }
            folder = folder.getParent();
        }
        return folder != null
                && root.relativize(file).getNameCount() <= DEPTH
                && isDrill(name(file))
                && !ClassFiles.isRoster(root, file);
    }

    private static boolean isDrill(String name) {
        String small = name.toLowerCase(Locale.ROOT);
        return (small.endsWith(".yaml") || small.endsWith(".yml")) && !isSettings(small) && !small.startsWith(".");
    }

    /** Whether a file would be the settings if it were named with more care: other capitals, or the short ending. */
    static boolean isSettings(String name) {
        return name.equalsIgnoreCase(SETTINGS) || name.equalsIgnoreCase("school.yml");
    }

    /** The file of a folder's settings, even if its name differs from the right one by capitals or ending. */
    public static Optional<Path> settings(Path root) throws IOException {
        return settings(root, Unsaved.NONE);
    }

    static Optional<Path> settings(Path root, Unsaved unsaved) throws IOException {
        Path usual = root.resolve(SETTINGS);
        if (unsaved.has(usual)) {
            return Optional.of(usual);
        }
        try (Stream<Path> files = Files.list(root)) {
            return files.filter(file -> isSettings(name(file)) && Files.isRegularFile(file))
                    .min(Comparator.naturalOrder());
        }
    }

    /** A drill's id: its file's name without the ending, in the normal form in which drills name it. */
    public static String id(Path file) {
        String name = Normalizer.normalize(name(file), Normalizer.Form.NFC);
        int dot = name.lastIndexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    /** A file's name as it is shown: below the folder, with forward slashes. */
    static String shown(Path root, Path file) {
        String name = root.relativize(file).toString().replace('\\', '/');
        return name.isEmpty() ? name(file) : name;
    }

    /** As {@link #shown}; a file elsewhere is shown by its name alone. */
    static String shownFrom(Path root, Path file) {
        Path base = root.toAbsolutePath().normalize();
        Path whole = file.toAbsolutePath().normalize();
        return whole.startsWith(base) ? shown(base, whole) : name(file);
    }

    /** A file's own name; empty for the root of a disk. */
    public static String name(Path file) {
        Path name = file.getFileName();
        return name == null ? "" : name.toString();
    }
}
