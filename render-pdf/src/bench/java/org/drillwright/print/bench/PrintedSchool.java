package org.drillwright.print.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.BufferedReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import org.drillwright.print.command.Program;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.Opener;
import java.util.Locale;

/** Runs the program in a school's folder and prints the processor's time in milliseconds: {@code PrintedSchool FOLDER …}. */
public final class PrintedSchool {

    private PrintedSchool() {}

    public static void main(String[] arguments) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        Invocation run = new Invocation(
                nowhere,
                nowhere,
                System.err,
                new BufferedReader(new StringReader("")),
                false,
                () -> 80,
                false,
                Path.of(arguments[0]),
                Optional.empty(),
                Opener.NONE,
                Clock.systemUTC(),
                () -> Locale.ENGLISH,
                () -> Locale.ENGLISH);
        int exit = Program.run(run, Arrays.copyOfRange(arguments, 1, arguments.length));
        OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        System.out.println(system.getProcessCpuTime() / 1_000_000);
        System.exit(exit);
    }
}
