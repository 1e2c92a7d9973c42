package org.drillwright.print.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Says what a drill's cards cost in schools of several sizes: {@code CardSizes EXAMPLE SIZE…}. Each printing is a
 * process of its own.
 */
public final class CardSizes {

    private static final List<Integer> HEAPS = List.of(64, 96, 128, 160, 192, 256, 320, 384, 512, 768, 1_024);

    private static final List<List<String>> WAYS = List.of(
            List.of("cards", "--sheet", "card"),
            List.of("cards", "--sheet", "a4"),
            List.of("cards", "--sheet", "a4", "--back", "pictures"));

    /** Of the benches of core, which are on the class path and not known when this is compiled. */
    private static final String MAKER = "org.drillwright.bench.LargeSchool";

    private CardSizes() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        System.out.printf("%8s %10s %14s%n", "drills", "heap, MB", "CPU, ms/drill");
        for (String size : List.of(arguments).subList(1, arguments.length)) {
            Path folder = Files.createTempDirectory("school");
            run(List.of(), MAKER, size, arguments[0], folder.toString());
            for (List<String> way : WAYS) {
                print(Integer.parseInt(size), folder, way);
            }
        }
    }

    /** The least heap of those tried, and the processor's time with it. */
    private static void print(int size, Path folder, List<String> way) throws IOException, InterruptedException {
        List<String> arguments = new ArrayList<>(List.of(folder.toString()));
        arguments.addAll(way);
        arguments.addAll(List.of("--out", folder + ".pdf"));
        for (int heap : HEAPS) {
            String said = run(
                    List.of("-Xmx" + heap + "m", "-XX:+UseSerialGC"),
                    PrintedSchool.class.getName(),
                    arguments.toArray(new String[0]));
            if (!said.isEmpty()) {
                double each = Double.parseDouble(said) / size;
                System.out.printf(Locale.ROOT, "%8d %10d %14.1f   %s%n", size, heap, each, String.join(" ", way));
                return;
            }
        }
        throw new IllegalStateException("no heap suffices");
    }

    /** What a process said; nothing if it failed, as when its heap does not suffice. */
    private static String run(List<String> options, String main, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), main));
        command.addAll(List.of(arguments));
        Process process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        return process.waitFor() == 0 ? said : "";
    }
}
