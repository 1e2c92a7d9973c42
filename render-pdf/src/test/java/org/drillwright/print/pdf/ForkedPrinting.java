package org.drillwright.print.pdf;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.print.Drills;
import org.drillwright.print.frame.Frame;

/** Prints cards in a Java process of its own. */
final class ForkedPrinting {

    private ForkedPrinting() {}

    /** Writes {@code count} cards, by turns of three drills, to the file named first. */
    public static void main(String[] args) throws IOException {
        int count = Integer.parseInt(args[1]);
        List<Frame> cards = new ArrayList<>();
        while (cards.size() < count) {
            cards.addAll(PdfWriterTest.cards(CardSize.A6, Drills.riposte(), Drills.second(), Drills.solo()));
        }
        Files.write(Path.of(args[0]), PdfWriterTest.pdf(cards.subList(0, count)));
    }

    /** What the Java of a folder prints with such options. */
    static byte[] print(Path javaHome, int cards, String... options) throws IOException, InterruptedException {
        Path file = Files.createTempFile("cards", ".pdf");
        List<String> command = new ArrayList<>();
        command.add(javaHome.resolve("bin").resolve("java").toString());
        // A run this short ends before code that is compiled with care pays.
        command.add("-XX:TieredStopAtLevel=1");
        command.addAll(Arrays.asList(options));
        command.addAll(List.of("-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(ForkedPrinting.class.getName(), file.toString(), String.valueOf(cards)));
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try {
            int exit = process.waitFor();
            if (exit != 0) {
                throw new IOException("printing ended with " + exit + ": " + String.join(" ", options));
            }
            return Files.readAllBytes(file);
        } finally {
            Files.delete(file);
        }
    }

    static Path thisJava() {
        return Path.of(System.getProperty("java.home"));
    }

    static boolean isInstalled(String program) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
    }
}
