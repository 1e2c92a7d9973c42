package org.drillwright.print.command.cards;

import java.util.Optional;
import org.drillwright.print.command.printing.DuplexEdge;
import org.drillwright.print.command.printing.PaperChoice;
import org.drillwright.print.command.printing.PrintOptions;
import org.drillwright.print.impose.Duplex;
import org.drillwright.print.impose.Laminate;
import org.drillwright.print.impose.Shift;
import org.drillwright.print.layout.fit.Format;
import org.drillwright.print.layout.words.Back;
import picocli.CommandLine.Option;

/** What becomes of the paper: how the printer turns and shifts it, and whether it is laminated. */
final class PaperOptions {

    @Option(names = "--duplex", paramLabel = "EDGE", defaultValue = "long")
    DuplexEdge edge = DuplexEdge.LONG;

    @Option(names = "--shift", paramLabel = "X,Y")
    Optional<Shift> shift = Optional.empty();

    @Option(names = "--laminate", paramLabel = "HOW", defaultValue = "none")
    Laminate laminate = Laminate.NONE;

    Duplex duplex() {
        return edge.duplex();
    }

    Shift shift() {
        return shift.orElse(Shift.NONE);
    }

    /** The same for cards of a format on some paper. */
    PrintOptions of(Format format, PaperChoice paper, Back back, boolean draft) {
        return new PrintOptions(format, paper, back, Optional.of(duplex()), laminate, shift(), draft);
    }
}
