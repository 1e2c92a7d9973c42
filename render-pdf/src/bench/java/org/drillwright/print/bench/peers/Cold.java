package org.drillwright.print.bench.peers;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A whole command, started anew each time below a shell that knows what its children cost. */
record Cold(String name, Path folder, List<String> command) implements Contender {

    private static final String SHELL = "\"$@\" 2>said; code=$?; times; exit $code";

    private static final Pattern TIMES = Pattern.compile("(\\d+)m([0-9.]+)s (\\d+)m([0-9.]+)s");

    Cold {
        command = List.copyOf(command);
    }

    @Override
    public Timed run() throws IOException, InterruptedException {
        List<String> all = new ArrayList<>(List.of("/bin/sh", "-c", SHELL, "sh"));
        all.addAll(command);
        long clock = System.nanoTime();
        Process process = new ProcessBuilder(all)
                .directory(folder.toFile())
                .redirectInput(new File("/dev/null"))
                .redirectError(folder.resolve("shell").toFile())
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        long took = System.nanoTime() - clock;
        if (code != 0) {
            throw new IOException(name + " ended with " + code + "; see " + folder.resolve("said"));
        }
        return new Timed(took, processor(said), said.lines().findFirst().orElse(""));
    }

    /** The last line is that of the children. */
    private static long processor(String said) {
        Matcher times = TIMES.matcher(said);
        double seconds = Double.NaN;
        while (times.find()) {
            seconds = 60 * (number(times, 1) + number(times, 3)) + number(times, 2) + number(times, 4);
        }
        return Math.round(seconds * 1e9);
    }

    private static double number(Matcher times, int group) {
        return Double.parseDouble(times.group(group));
    }
}
