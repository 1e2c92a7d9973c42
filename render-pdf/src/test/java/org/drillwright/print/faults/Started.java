package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.command.Main;
import org.drillwright.print.command.RuntimeClassPath;

/**
 * A run of the program as a process of its own, with all that it said.
 *
 * @param out its standard output
 * @param err its standard error
 */
public record Started(int code, String out, String err) {

    /** Runs it as a shell would. */
    public static Started run(Path here, String... arguments) throws IOException, InterruptedException {
        return run(here, List.of(), List.of(), arguments);
    }

    /**
     * Runs it with options of the machine.
     *
     * @param before a command that starts the machine in its turn, such as {@code setpriv}; none if empty
     * @param options of the Java machine
     */
    public static Started run(Path here, List<String> before, List<String> options, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(before);
        command.addAll(java(options, classPath(), Main.class));
        command.addAll(Arrays.asList(arguments));
        return run(new ProcessBuilder(command).directory(here.toFile()));
    }

    /** Runs any command to its end. */
    public static Started run(ProcessBuilder builder) throws IOException, InterruptedException {
        Path out = Files.createTempFile("out", null);
        Path err = Files.createTempFile("err", null);
        builder.environment().put("LC_ALL", "C.UTF-8");
        Process process =
                builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        process.getOutputStream().close();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "it hangs");
        Started ended = new Started(process.exitValue(), Files.readString(out), Files.readString(err));
        Files.delete(out);
        Files.delete(err);
        return ended;
    }

    /** What the program is made of. */
    public static String classPath() {
        return join(RuntimeClassPath.all().stream());
    }

    /** The same, copied to where anybody may read it. */
    public static String classPathIn(Path folder) throws IOException {
        List<Path> copies = new ArrayList<>();
        for (Path part : RuntimeClassPath.all()) {
            Path copy = folder.resolve(copies.size() + "-" + part.getFileName());
            copies.add(copy);
            try (Stream<Path> files = Files.walk(part)) {
                for (Path file : files.toList()) {
                    Files.copy(file, copy.resolve(part.relativize(file).toString()));
                }
            }
        }
        return join(copies.stream());
    }

    /** The tests' own, less a logging library that the program is packed without and that would speak up. */
    static String testClassPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(part -> !part.contains("slf4j"))
                .collect(Collectors.joining(File.pathSeparator));
    }

    private static String join(Stream<Path> paths) {
        return paths.map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    }

    public static List<String> java(List<String> options, String classPath, Class<?> main) {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
        command.addAll(options);
        command.addAll(List.of("-cp", classPath, main.getName()));
        return command;
    }

    /** Whether it said one sentence, and nothing of its insides. */
    public boolean isOneSentence() {
        return out.isEmpty() && err.lines().count() == 1 && !err.contains("Exception") && !err.contains("\tat ");
    }
}
