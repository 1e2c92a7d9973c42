package org.drillwright.print.command.folder;

import java.util.Optional;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import picocli.CommandLine.Option;

/** The paper in the printer, where it is not the school's. */
public final class SheetOption {

    @Option(names = "--sheet", paramLabel = "SIZE")
    Optional<SheetSize> size = Optional.empty();

    public boolean isGiven() {
        return size.isPresent();
    }

    /** The sheet that was asked for, or else the school's. */
    public SheetSize of(School settings) {
        return size.orElse(settings.sheet());
    }
}
