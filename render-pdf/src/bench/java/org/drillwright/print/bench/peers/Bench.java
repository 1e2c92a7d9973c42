package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What all comparisons share.
 *
 * @param rounds how often each contender has its turn; a third of it where one turn takes long
 * @param sources the folder of the module
 * @param work a new folder for all that is made
 * @param image the launcher of a packed Java image, if there is one to be measured
 */
record Bench(int rounds, Path sources, Path work, Jars jars, Optional<Path> image) {

    static Bench of(int rounds) throws IOException {
        Path sources = Path.of(System.getProperty("module"));
        Path target = sources.resolve("target");
        Path work = Files.createTempDirectory(Files.createDirectories(target.resolve("peers")), "run");
        return new Bench(
                rounds,
                sources,
                work,
                new Jars(
                        System.getProperty("peers.classpath", ""),
                        target.resolve("drillwright.jar"),
                        target.resolve("bench-classes")),
                Optional.of(System.getProperty("image", ""))
                        .filter(path -> !path.isBlank())
                        .map(Path::of));
    }

    int fewRounds() {
        return Math.max(1, rounds / 3);
    }

    Path example() {
        return sources.resolveSibling("drills");
    }

    Path file(String name) {
        return work.resolve(name);
    }

    static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** A Java program of the bench. */
    static List<String> java(String classPath, Class<?> main, Object... arguments) {
        return java(classPath, main.getName(), arguments);
    }

    static List<String> java(String classPath, String main, Object... arguments) {
        List<String> command = new ArrayList<>(List.of(java(), "-cp", classPath, main));
        for (Object argument : arguments) {
            command.add(String.valueOf(argument));
        }
        return command;
    }

    /** The program as it is packed. */
    List<String> program(Object... arguments) {
        List<String> command =
                new ArrayList<>(List.of(java(), "-jar", jars.runnable().toString()));
        for (Object argument : arguments) {
            command.add(String.valueOf(argument));
        }
        return command;
    }
}
