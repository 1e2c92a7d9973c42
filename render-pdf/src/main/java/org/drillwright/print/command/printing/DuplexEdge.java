package org.drillwright.print.command.printing;

import java.util.Locale;
import org.drillwright.print.impose.Duplex;

/** The edge over which a printer turns a sheet, in the words of the command line. */
public enum DuplexEdge {
    LONG(Duplex.LONG_EDGE),
    SHORT(Duplex.SHORT_EDGE);

    private final Duplex duplex;

    DuplexEdge(Duplex duplex) {
        this.duplex = duplex;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Duplex duplex() {
        return duplex;
    }
}
