package org.drillwright.print.bench.peers;

import java.io.File;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Of all archives of the bench those that one contender needs, so that none searches another's. */
final class Jars {

    private final List<Path> all;
    private final Path ours;
    private final Path classes;

    /**
     * @param path all archives, as a class path
     * @param ours the runnable archive
     * @param classes the bench's own classes
     */
    Jars(String path, Path ours, Path classes) {
        this.all = Arrays.stream(path.split(File.pathSeparator)).map(Path::of).toList();
        this.ours = ours;
        this.classes = classes;
    }

    Path runnable() {
        return ours;
    }

    String ours() {
        return path(Stream.of(ours, classes));
    }

    String bench() {
        return classes.toString();
    }

    /** The bench's classes and the archives whose names begin so. */
    String of(String... names) {
        return path(Stream.concat(Stream.of(classes), Arrays.stream(names).flatMap(name -> {
            List<Path> found = all.stream().filter(jar -> isNamed(jar, name)).toList();
            if (found.isEmpty()) {
                throw new IllegalStateException("no archive is named " + name);
            }
            return found.stream();
        })));
    }

    /** The version of an archive, from its name. */
    String version(String name) {
        return all.stream()
                .filter(jar -> isNamed(jar, name + "-"))
                .map(jar -> String.valueOf(jar.getFileName()))
                .map(file -> file.substring(name.length() + 1, file.length() - ".jar".length()))
                .filter(version -> Character.isDigit(version.charAt(0)))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no archive is named " + name));
    }

    private static boolean isNamed(Path jar, String name) {
        return String.valueOf(jar.getFileName()).startsWith(name);
    }

    private static String path(Stream<Path> jars) {
        return jars.map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }
}
