package org.drillwright.print.bench.peers;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A process that stays and is asked for one pass after another. */
final class Warm implements Contender {

    private final String name;
    private final Process process;
    private final int passes;
    private final BufferedReader answers;

    private Warm(String name, Process process, int passes) {
        this.name = name;
        this.process = process;
        this.passes = passes;
        this.answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    /**
     * Starts it and lets it warm up.
     *
     * @param passes how many a turn has, so that it is longer than the ticks of the processor's clock
     * @param before how many passes there are before the first turn
     */
    static Warm start(String name, Path folder, List<String> command, int passes, int before) throws IOException {
        Warm warm = new Warm(
                name,
                new ProcessBuilder(command)
                        .directory(folder.toFile())
                        .redirectError(Redirect.DISCARD)
                        .start(),
                passes);
        warm.answer();
        for (int pass = 0; pass < before; pass += passes) {
            warm.run();
        }
        return warm;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public Timed run() throws IOException {
        OutputStream in = process.getOutputStream();
        in.write((passes + "\n").getBytes(StandardCharsets.UTF_8));
        in.flush();
        String[] said = answer().split(" ");
        return new Timed(Long.parseLong(said[0]), Long.parseLong(said[1]), said[2]);
    }

    private String answer() throws IOException {
        String line = answers.readLine();
        if (line == null) {
            throw new IOException(name + " ended without an answer");
        }
        return line;
    }

    @Override
    public void close() {
        process.destroy();
    }
}
