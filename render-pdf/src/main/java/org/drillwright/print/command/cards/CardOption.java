package org.drillwright.print.command.cards;

import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.model.School;
import org.drillwright.print.layout.fit.Format;
import picocli.CommandLine.Option;

/** How large cards are, and the words on them. */
final class CardOption {

    @Option(names = "--card", paramLabel = "SIZE")
    Optional<CardSize> size = Optional.empty();

    @Option(names = "--large-print")
    boolean largePrint;

    /** The size that was asked for, or else the school's. */
    CardSize size(School settings) {
        return size.orElse(settings.card());
    }

    Format format(School settings) {
        Format usual = Format.of(size(settings));
        return largePrint ? usual.inLargePrint() : usual;
    }
}
