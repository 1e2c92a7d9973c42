package org.drillwright.print.command.classes;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Who was there from which round on: the same words for a plan and for what was worked of it. */
final class StageOptions {

    /** In the order in which it was typed. */
    final List<RoundByRound.Word> said = new ArrayList<>();

    @Option(names = RoundByRound.FROM, paramLabel = "N", parameterConsumer = RoundByRound.InOrder.class)
    List<RoundByRound.Word> fromRound = said;

    @Option(names = RoundByRound.WITHOUT, paramLabel = "NAME", parameterConsumer = RoundByRound.InOrder.class)
    List<RoundByRound.Word> without = said;

    @Option(names = RoundByRound.WITH, paramLabel = "NAME", parameterConsumer = RoundByRound.InOrder.class)
    List<RoundByRound.Word> with = said;

    RoundByRound typed() {
        return new RoundByRound(said);
    }
}
