package org.drillwright.print.command.console;

import java.io.BufferedReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntSupplier;
import java.util.function.Supplier;
import org.drillwright.report.Paint;
import org.drillwright.report.TextReport;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/**
 * What one run of the program was given.
 *
 * @param out for what was asked for, where people read it: on a terminal long lines are broken
 * @param data the same for what programs read: nothing is broken
 * @param err for why it could not be had
 * @param in answers to questions
 * @param terminal whether a person sits at both ends
 * @param width of the terminal, in columns
 * @param colour whether words may be coloured
 * @param here the folder that the caller stands in
 * @param home the folder that the program was unpacked into, if it was
 * @param opener the system's own programs
 * @param clock tells the day where a command writes one down
 * @param tongue the language that people are spoken to in; found out when it is first asked for
 * @param whereabouts the region that the system is set to, whatever language is spoken
 */
public record Invocation(
        PrintStream out,
        PrintStream data,
        PrintStream err,
        BufferedReader in,
        boolean terminal,
        IntSupplier width,
        boolean colour,
        Path here,
        Optional<Path> home,
        Opener opener,
        Clock clock,
        Supplier<Locale> tongue,
        Supplier<Locale> whereabouts) {

    /** The same run, of which all that it says is remembered. */
    public Invocation heard(StringBuilder heard) {
        return new Invocation(
                new Echo(out, heard),
                new Echo(data, heard),
                err,
                in,
                terminal,
                width,
                colour,
                here,
                home,
                opener,
                clock,
                tongue,
                whereabouts);
    }

    /** The language that people are spoken to in. */
    public Locale language() {
        return tongue.get();
    }

    /** Where the printer stands. */
    public Locale region() {
        return whereabouts.get();
    }

    /** A message in that language. */
    public String said(Message message) {
        return message.in(language());
    }

    /** Says what was asked for, or what was done. */
    public void say(Message message) {
        out.println(said(message));
    }

    /** Says why something could not be had. */
    public void sayWhyNot(Message message) {
        err.println(said(message));
    }

    /** Shows what was found, where what was asked for goes. */
    public void show(List<Finding> findings) {
        out.print(TextReport.of(findings, paint(), language()));
    }

    /** Shows what was found where it doesn't mix with what was asked for. */
    public void showWhyNot(List<Finding> findings) {
        err.print(TextReport.of(findings, paint(), language()));
    }

    /** The day on which a command is run. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The same run, spoken in another language. */
    public Invocation in(Supplier<Locale> language) {
        return new Invocation(
                out, data, err, in, terminal, width, colour, here, home, opener, clock, language, whereabouts);
    }

    public Paint paint() {
        return colour ? new AnsiPaint() : Paint.NONE;
    }
}
