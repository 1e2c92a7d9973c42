package org.drillwright.print.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Times whole processes by turns and says how much longer the program takes than the bare loop: {@code Ratio ROUNDS}.
 * By turns, so that whatever else the machine does meets both alike; of each the median counts.
 */
public final class Ratio {

    private static final String CARDS = "1000";

    private final int rounds;
    private final Path folder;

    private Ratio(int rounds, Path folder) {
        this.rounds = rounds;
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Ratio ratio = new Ratio(Integer.parseInt(args[0]), Files.createTempDirectory("cards"));
        String record = ratio.file("record");
        String none = ratio.file("none");
        ratio.run(RecordCards.class, CARDS, record);
        Files.write(Path.of(none), new byte[] {Recorded.END});
        System.out.printf("%-28s %10s %10s %6s%n", "", "program", "bare loop", "ratio");
        ratio.compare(CARDS + " cards", new String[] {CARDS}, new String[] {record});
        ratio.compare("one card, empty document", new String[] {"1"}, new String[] {none});
    }

    private String file(String name) {
        return folder.resolve(name).toString();
    }

    private void compare(String what, String[] program, String[] bare) throws IOException, InterruptedException {
        List<Long> programs = new ArrayList<>();
        List<Long> bares = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            programs.add(run(PrintCards.class, program[0], file("program.pdf")));
            bares.add(run(BareCards.class, bare[0], file("bare.pdf")));
        }
        long ours = median(programs);
        long theirs = median(bares);
        System.out.printf(Locale.ROOT, "%-28s %7d ms %7d ms %6.2f%n", what, ours, theirs, (double) ours / theirs);
    }

    private static long median(List<Long> times) {
        return times.stream().sorted().toList().get(times.size() / 2);
    }

    /** How long a process took, in milliseconds. */
    private long run(Class<?> main, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx256m", "-cp", System.getProperty("java.class.path"), main.getName()));
        command.addAll(List.of(args));
        long start = System.nanoTime();
        int exit = new ProcessBuilder(command).inheritIO().start().waitFor();
        if (exit != 0) {
            throw new IOException(main.getSimpleName() + " ended with " + exit);
        }
        return (System.nanoTime() - start) / 1_000_000;
    }
}
