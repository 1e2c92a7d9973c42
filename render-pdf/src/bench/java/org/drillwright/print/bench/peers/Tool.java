package org.drillwright.print.bench.peers;

import java.io.File;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A program of the machine. */
record Tool(String name, Path path) {

    static Optional<Tool> named(String name) {
        return Arrays.stream(
                        Objects.requireNonNullElse(System.getenv("PATH"), "").split(File.pathSeparator))
                .map(folder -> Path.of(folder, name))
                .filter(Files::isExecutable)
                .map(path -> new Tool(name, path))
                .findFirst();
    }

    /** What it says of its version. */
    String version() throws IOException, InterruptedException {
        return said(List.of("--version")).lines().findFirst().orElse("").strip();
    }

    /** What it says. */
    String said(List<String> arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(path.toString()));
        command.addAll(arguments);
        Process process =
                new ProcessBuilder(command).redirectError(Redirect.DISCARD).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(name + " said: " + said);
        }
        return said;
    }
}
