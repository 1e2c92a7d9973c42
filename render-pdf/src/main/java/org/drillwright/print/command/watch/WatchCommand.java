package org.drillwright.print.command.watch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.folder.Selection;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows drills on a local page that follows each save. */
@Command(name = "watch", sortOptions = false)
public final class WatchCommand extends CommandInSchool {

    private static final int PORTS = 65_535;

    @Parameters(paramLabel = "DRILL", arity = "0..1")
    Optional<String> drill = Optional.empty();

    @Option(names = "--port", paramLabel = "PORT", defaultValue = "0")
    int port;

    @Option(names = "--no-browser")
    boolean noBrowser;

    public WatchCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        if (port < 0 || port > PORTS) {
            throw new CannotRun(Message.of(WatchCommand.class, "watch-command.a.port.is.a", PORTS, port));
        }
        List<String> named = drill.map(List::of).orElse(List.of());
        Path root = root(named);
        Optional<String> first = named.isEmpty() ? Optional.empty() : Optional.of(first(root, named));
        try (WatchSession watching = WatchSession.start(root, port, run.language())) {
            String address = first.map(watching::address).orElseGet(watching::address);
            announce(address);
            waitForTheEnd();
        }
        return Exit.DONE;
    }

    private String first(Path root, List<String> named) {
        return Selection.of(Schools.openFilled(run, root), run, named)
                .entries()
                .get(0)
                .name();
    }

    private void announce(String address) {
        run.out().println(address);
        if (run.terminal()) {
            if (!noBrowser && !run.opener().open(address)) {
                run.say(Message.of(WatchCommand.class, "watch-command.no.browser.could.be"));
            }
            run.say(Message.of(WatchCommand.class, "watch-command.save.a.drill.and"));
        }
        run.out().flush();
    }

    /** A line ends it. The end of the input does so on a terminal only: in a pipe there may never have been any. */
    private void waitForTheEnd() {
        try {
            if (run.in().readLine() == null && !run.terminal()) {
                new CountDownLatch(1).await();
            }
        } catch (InterruptedException | IOException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
