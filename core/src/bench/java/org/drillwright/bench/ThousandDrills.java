package org.drillwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * A thousand drill files on the disk: the example school's and those of the tests, as often as needed. One school holds
 * each drill once, so that no rule about drills of the same turns has anything to say.
 */
final class ThousandDrills {

    static final int DRILLS = 1_000;

    private final List<Path> schools = new ArrayList<>();
    private final List<Path> files = new ArrayList<>();

    private ThousandDrills() {}

    static ThousandDrills none() {
        return new ThousandDrills();
    }

    /**
     * Copies them below a folder.
     *
     * @param core the folder of the module core
     */
    static ThousandDrills below(Path folder, Path core) throws IOException {
        List<Path> sources = new ArrayList<>();
        for (String level : List.of("beginner", "intermediate", "training")) {
            sources.addAll(yaml(core.resolveSibling("drills").resolve(level)));
        }
        sources.addAll(yaml(core.resolve("src/test/resources/correct")));
        ThousandDrills made = new ThousandDrills();
        for (int drill = 0; drill < DRILLS; drill++) {
            made.copy(sources.get(drill % sources.size()), folder.resolve("school-" + drill / sources.size()));
        }
        return made;
    }

    private static List<Path> yaml(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    private void copy(Path source, Path school) throws IOException {
        if (!schools.contains(school)) {
            Files.createDirectories(school);
            schools.add(school);
        }
        files.add(Files.copy(source, school.resolve(Objects.requireNonNull(source.getFileName()))));
    }

    List<Path> schools() {
        return List.copyOf(schools);
    }

    List<Path> files() {
        return List.copyOf(files);
    }
}
