package org.drillwright.print.command.console;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Opens the process's own streams: UTF-8 in a pipe or a file, the console's own charset on a terminal. */
public final class StandardStreams {

    private static final int BUFFER = 1 << 16;

    private StandardStreams() {}

    /** @param home the folder that the program was unpacked into, if it was */
    public static Invocation open(Optional<Path> home) {
        Optional<Console> console = Optional.ofNullable(System.console()).filter(StandardStreams::isTerminal);
        Charset charset = console.map(Console::charset).orElse(StandardCharsets.UTF_8);
        TerminalWidth width = new TerminalWidth(System.getenv());
        Optional<Margin> margin = console.map(terminal -> new Margin(width));
        BufferedReader in = console.map(Console::reader)
                .<BufferedReader>map(reader -> new Answers(reader, () -> margin.ifPresent(Margin::begin)))
                .orElseGet(() -> new BufferedReader(
                        new InputStreamReader(new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8)));
        boolean colour = console.isPresent() && allowsColour(System.getenv(), System.getProperty("os.name"));
        OutputStream out = stream(FileDescriptor.out, 1);
        return new Invocation(
                new ShownStream(out, charset, colour, true, margin),
                new ShownStream(out, charset, colour, false, Optional.empty()),
                new ShownStream(stream(FileDescriptor.err, 2), charset, colour, true, margin),
                in,
                console.isPresent(),
                width,
                colour,
                Path.of("").toAbsolutePath(),
                home,
                new SystemOpener(System.getProperty("os.name"), System.getenv()),
                Clock.system(ZoneId.systemDefault()),
                () -> Locale.getDefault(Locale.Category.DISPLAY),
                () -> Locale.getDefault(Locale.Category.FORMAT));
    }

    private static OutputStream stream(FileDescriptor descriptor, int number) {
        return new BufferedOutputStream(new Outlet(new FileOutputStream(descriptor), number), BUFFER);
    }

    /** The process's own streams as bytes, for a talk between programs; nothing else may use them meanwhile. */
    public static BytePipe bytes() {
        return new BytePipe(new FileInputStream(FileDescriptor.in), new FileOutputStream(FileDescriptor.out));
    }

    /** From Java 22 on there is a console object in a pipe, too; it has to be asked. */
    private static boolean isTerminal(Console console) {
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (NoSuchMethodException olderJava) {
            return true;
        } catch (ReflectiveOperationException unknown) {
            return false;
        }
    }

    /** Whether a terminal understands colours and its owner wants them. */
    static boolean allowsColour(Map<String, String> environment, String system) {
        boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        String kind = environment.getOrDefault("TERM", "");
        boolean windows = system.startsWith("Windows");
        boolean able = windows ? environment.containsKey("WT_SESSION") || !kind.isEmpty() : !kind.isEmpty();
        return !refused && able && !kind.equals("dumb");
    }
}
