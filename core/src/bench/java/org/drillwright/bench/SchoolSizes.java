package org.drillwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Says what a drill costs in schools of several sizes: each school is opened by processes of its own. */
final class SchoolSizes {

    private static final List<Integer> SIZES = List.of(100, 1_000, 10_000);
    private static final List<Integer> HEAPS = List.of(16, 24, 32, 48, 64, 96, 128, 160, 192, 256, 384, 512, 1_024);
    private static final int ROUNDS = 3;
    private static final int AMPLE = 1_024;

    private SchoolSizes() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path example = Path.of(System.getProperty("core", "")).toAbsolutePath().resolveSibling("drills");
        System.out.printf(
                "%8s %16s %12s %10s %14s %12s%n",
                "drills", "open, ms/drill", "held, KB/drill", "heap, MB", "one save, ms", "files read");
        for (int size : SIZES) {
            Path folder = Files.createTempDirectory("school");
            LargeSchool.make(size, example, folder);
            rest(folder);
            List<long[]> rounds = new ArrayList<>();
            for (int round = 0; round < ROUNDS; round++) {
                rounds.add(figures(run(folder, AMPLE)));
            }
            System.out.printf(
                    Locale.ROOT,
                    "%8d %16.2f %12.1f %10d %14d %12d%n",
                    size,
                    (double) median(rounds, 0) / size,
                    median(rounds, 1) / 1_000.0 / size,
                    leastHeap(folder),
                    median(rounds, 2),
                    median(rounds, 3));
        }
    }

    /** As if all had been saved long ago, in their order. */
    private static void rest(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            Instant time = Instant.parse("2026-09-01T12:00:00Z");
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                Files.setLastModifiedTime(file, FileTime.from(time));
                time = time.plusSeconds(3);
            }
        }
    }

    private static long median(List<long[]> rounds, int figure) {
        return rounds.stream().mapToLong(round -> round[figure]).sorted().toArray()[rounds.size() / 2];
    }

    private static int leastHeap(Path folder) throws IOException, InterruptedException {
        for (int heap : HEAPS) {
            if (run(folder, heap).exit() == 0) {
                return heap;
            }
        }
        throw new IllegalStateException("no heap suffices");
    }

    private record Run(int exit, String said) {}

    private static long[] figures(Run run) {
        return Stream.of(run.said().strip().split(" ")).mapToLong(Long::parseLong).toArray();
    }

    private static Run run(Path folder, int heap) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx" + heap + "m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        OpenedSchool.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes());
        return new Run(process.waitFor(), said);
    }
}
