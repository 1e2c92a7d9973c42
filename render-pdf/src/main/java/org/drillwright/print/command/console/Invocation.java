package org.drillwright.print.command.console;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.drillwright.report.Paint;

/**
 * What one run of the program was given.
 *
 * @param out for what was asked for
 * @param err for why it could not be had
 * @param in answers to questions
 * @param terminal whether a person sits at both ends
 * @param colour whether words may be coloured
 * @param here the folder that the caller stands in
 * @param home the folder that the program was unpacked into, if it was
 * @param clock tells the day where a command writes one down
 */
public record Invocation(
        PrintStream out,
        PrintStream err,
        BufferedReader in,
        boolean terminal,
        boolean colour,
        Path here,
        Optional<Path> home,
        Clock clock) {

    public Paint paint() {
        return colour ? new AnsiPaint() : Paint.NONE;
    }
}
