package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.planning.Change;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** Who came late or left early; may be given again for a later round. */
final class ChangeOptions {

    @ArgGroup(exclusive = false, multiplicity = "0..*")
    List<Given> given = new ArrayList<>();

    /** One change. */
    static final class Given {

        @Option(
                names = "--from-round",
                paramLabel = "N",
                required = true,
                description = "Plans the rounds from this one on anew; those before stay as they were planned. May be"
                        + " given several times, each with its --without and --with.")
        int fromRound = 1;

        @Option(names = "--without", paramLabel = "NAME", description = "Somebody who is gone from that round on.")
        List<String> without = new ArrayList<>();

        @Option(names = "--with", paramLabel = "NAME", description = "Somebody who has come by that round.")
        List<String> with = new ArrayList<>();
    }

    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        int last = 1;
        for (Given one : given) {
            if (one.fromRound < last) {
                throw new CannotRun("--from-round wants a round from " + last + " on.");
            }
            last = one.fromRound;
            changes.add(new Change(one.fromRound, one.without, one.with));
        }
        return changes;
    }
}
