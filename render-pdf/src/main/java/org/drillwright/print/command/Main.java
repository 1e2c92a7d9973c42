package org.drillwright.print.command;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.StandardStreams;

/** Starts the program; the only place that ends the process. */
public final class Main {

    /** In an image with a Java of its own the program lies in no archive that could tell its folder. */
    private static final String HOME = "drillwright.home";

    private Main() {}

    public static void main(String[] arguments) {
        Invocation run = StandardStreams.open(home());
        int code = Program.run(run, arguments);
        System.exit(Delivery.confirm(run, code));
    }

    /** The folder that the program was unpacked into: as whoever started it says, or else where its archive lies. */
    private static Optional<Path> home() {
        String told = System.getProperty(HOME);
        if (told != null) {
            return Optional.of(Path.of(told));
        }
        CodeSource source = Main.class.getProtectionDomain().getCodeSource();
        if (source == null || !source.getLocation().getProtocol().equals("file")) {
            return Optional.empty();
        }
        try {
            return Optional.ofNullable(Path.of(source.getLocation().toURI()).getParent());
        } catch (URISyntaxException | IllegalArgumentException elsewhere) {
            return Optional.empty();
        }
    }
}
