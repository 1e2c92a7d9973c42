package org.drillwright.print.command;

import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.Opener;

/**
 * One run of the program within this process.
 *
 * @param out all that went to the standard output
 * @param err all that went to the standard error
 */
public record Trial(int code, String out, String err) {

    /** The day that all trials take place on: 1 September 2026. */
    private static final Instant NOON = Instant.parse("2026-09-01T12:00:00Z");

    /** Runs it as in a pipe. */
    public static Trial run(Path here, String... arguments) {
        return run(here, NOON, false, false, "", Opener.NONE, arguments);
    }

    /** Runs it as in a pipe, on a machine whose clock shows another moment. */
    public static Trial at(String moment, Path here, String... arguments) {
        return run(here, Instant.parse(moment), false, false, "", Opener.NONE, arguments);
    }

    /** Runs it as on a terminal, with a person's answers. */
    static Trial talk(Path here, String answers, String... arguments) {
        return run(here, NOON, true, false, answers, Opener.NONE, arguments);
    }

    /** The same on a desk whose programs open what they are handed. */
    static Trial talk(Path here, Opener opener, String answers, String... arguments) {
        return run(here, NOON, true, false, answers, opener, arguments);
    }

    /** Runs it as on a terminal that takes colours. */
    static Trial inColour(Path here, String... arguments) {
        return run(here, NOON, true, true, "", Opener.NONE, arguments);
    }

    private static Trial run(
            Path here,
            Instant now,
            boolean terminal,
            boolean colour,
            String answers,
            Opener opener,
            String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream shown = new PrintStream(out, true, StandardCharsets.UTF_8);
        Invocation run = new Invocation(
                shown,
                shown,
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new BufferedReader(new StringReader(answers)),
                terminal,
                () -> 80,
                colour,
                here,
                Optional.empty(),
                opener,
                Clock.fixed(now, ZoneOffset.UTC),
                () -> Locale.ENGLISH,
                () -> Locale.ENGLISH);
        int code = Program.run(run, arguments);
        return new Trial(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
