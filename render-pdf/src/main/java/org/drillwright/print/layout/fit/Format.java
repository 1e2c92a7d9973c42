package org.drillwright.print.layout.fit;

import org.drillwright.model.CardSize;

/** A size of card, and where things stand on it. */
public record Format(CardSize size, Grid grid) {

    public static Format of(CardSize size) {
        return new Format(size, Grid.of(size));
    }

    /** The same paper for who sees badly. */
    public Format inLargePrint() {
        return new Format(size, grid.inLargePrint());
    }
}
