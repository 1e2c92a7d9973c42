package org.drillwright.print.command.console;

import java.io.BufferedOutputStream;
import java.io.BufferedReader;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
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
        BufferedReader in = console.map(Console::reader)
                .map(BufferedReader::new)
                .orElseGet(() -> new BufferedReader(
                        new InputStreamReader(new FileInputStream(FileDescriptor.in), StandardCharsets.UTF_8)));
        boolean colour = console.isPresent() && allowsColour(System.getenv(), System.getProperty("os.name"));
        return new Invocation(
                stream(FileDescriptor.out, 1, charset, colour),
                stream(FileDescriptor.err, 2, charset, colour),
                in,
                console.isPresent(),
                colour,
                Path.of("").toAbsolutePath(),
                home,
                Clock.system(ZoneId.systemDefault()));
    }

    private static PrintStream stream(FileDescriptor descriptor, int number, Charset charset, boolean colour) {
        Outlet outlet = new Outlet(new FileOutputStream(descriptor), number);
        return new ShownStream(new BufferedOutputStream(outlet, BUFFER), charset, colour);
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
