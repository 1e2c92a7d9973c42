package org.drillwright.print.command;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Optional;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.StandardStreams;

/** Starts the program; the only place that ends the process. */
public final class Main {

    private Main() {}

    public static void main(String[] arguments) {
        Invocation run = StandardStreams.open(home());
        int code = Program.run(run, arguments);
        System.exit(Delivery.confirm(run, code));
    }

    /** The folder that the program's own archive lies in. */
    private static Optional<Path> home() {
        CodeSource source = Main.class.getProtectionDomain().getCodeSource();
        try {
            return source == null
                    ? Optional.empty()
                    : Optional.ofNullable(Path.of(source.getLocation().toURI()).getParent());
        } catch (URISyntaxException | IllegalArgumentException elsewhere) {
            return Optional.empty();
        }
    }
}
