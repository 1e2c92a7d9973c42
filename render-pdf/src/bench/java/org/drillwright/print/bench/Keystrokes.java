package org.drillwright.print.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.bench.LargeSchool;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.editor.workspace.OpenSchool;
import org.drillwright.print.command.editor.workspace.Workspace;

/**
 * Says how long it takes, from a pause of typing on, until it is known what is to be found in a drill: in schools of several
 * sizes, the first time and when the program is warm. The turn of one count is parried otherwise each time.
 */
final class Keystrokes {

    private static final List<Integer> SIZES = List.of(50, 500, 5_000);
    private static final int PAUSES = 200;
    private static final List<String> PARRIES = List.of("Parry quarte", "Parry octave", "Parry sixte", "Parr quarte");

    private Keystrokes() {}

    public static void main(String[] arguments) throws IOException {
        Path example = Path.of(System.getProperty("module", "")).toAbsolutePath().resolveSibling("drills");
        System.out.printf("%8s %12s %12s %12s %12s%n", "drills", "open, ms", "first, ms", "median, ms", "95 in 100");
        for (int size : SIZES) {
            Path folder = Files.createTempDirectory("school");
            LargeSchool.make(size, example, folder);
            try (Workspace workspace = new Workspace(() -> {})) {
                measure(size, folder, workspace);
            }
        }
    }

    private static void measure(int size, Path folder, Workspace workspace) throws IOException {
        Path file = drill(folder);
        String text = Files.readString(file);
        String uri = file.toUri().toString();
        long begun = now();
        workspace.open(uri, file, 0, text);
        OpenSchool school = workspace.opened(uri).orElseThrow().school();
        int found = school.findings(workspace.opened(uri).orElseThrow().document()).size();
        long opened = now() - begun;
        List<Long> times = new ArrayList<>();
        for (int pause = 1; pause <= PAUSES; pause++) {
            Document document = workspace.opened(uri).orElseThrow().document();
            long from = now();
            workspace.change(document.saying(
                    pause, text.replaceFirst("Parry quarte", PARRIES.get(pause % PARRIES.size()))));
            found += school.findings(workspace.opened(uri).orElseThrow().document()).size();
            times.add(now() - from);
        }
        long first = times.get(0);
        List<Long> sorted = times.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%8d %12.0f %12.1f %12.1f %12.1f   (%d findings)%n",
                size,
                opened / 1e6,
                first / 1e6,
                sorted.get(PAUSES / 2) / 1e6,
                sorted.get(PAUSES * 95 / 100) / 1e6,
                found);
    }

    /** Of the processor, so that what else the machine does is not counted. */
    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static Path drill(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.getFileName().toString().contains("second-intention"))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
