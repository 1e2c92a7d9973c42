package org.drillwright.print.faults;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.drillwright.print.command.Trial;

/** A process that runs writing commands without a pause until it is killed; it says '!' once all kinds of them write. */
final class Busy {

    /** Evenings that are recorded one after another. */
    static final int EVENINGS = 400;

    private Busy() {}

    /**
     * Works until it is killed.
     *
     * @param arguments a folder, and the kinds of work to do there, at once
     */
    public static void main(String[] arguments) throws InterruptedException {
        Path root = Path.of(arguments[0]);
        List<String> kinds = List.of(arguments).subList(1, arguments.length);
        CountDownLatch started = new CountDownLatch(kinds.size());
        for (String kind : kinds) {
            new Thread(() -> work(root.resolve(kind), kind, started)).start();
        }
        started.await();
        System.out.write('!');
        System.out.flush();
    }

    private static void work(Path folder, String kind, CountDownLatch started) {
        try {
            for (int at = 0; ; at++) {
                if (at == 1) {
                    started.countDown();
                }
                switch (kind) {
                    case "cards" ->
                        run(folder, "cards", "straight", "--card", at % 2 == 0 ? "a6" : "a7", "--out", "cards.pdf");
                    case "tidy" -> again(folder, "tidy", "--write");
                    case "fix" -> again(folder, "check", "--fix", "--write");
                    default -> evening(folder, kind, at);
                }
            }
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** The file as it was is put back in one move, then it is written anew. */
    private static void again(Path folder, String... command) throws IOException {
        Path copy = folder.resolve("copy");
        Files.copy(folder.resolve("before"), copy, StandardCopyOption.REPLACE_EXISTING);
        Files.move(copy, folder.resolve("straight.yaml"), StandardCopyOption.ATOMIC_MOVE);
        run(folder, command);
    }

    private static void evening(Path folder, String kind, int at) {
        if (at < EVENINGS) {
            run(folder, "record", kind + at, "--plan", "none");
        }
    }

    private static void run(Path folder, String... command) {
        Trial.run(folder, command);
    }
}
