package org.drillwright.print.command.printing;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.SheetSize;

/** What cards are printed on. */
public enum Paper {
    A4(Optional.of(SheetSize.A4)),
    LETTER(Optional.of(SheetSize.LETTER)),
    /** A page as large as the card: one to a page. */
    CARD(Optional.empty());

    private final Optional<SheetSize> sheet;

    Paper(Optional<SheetSize> sheet) {
        this.sheet = sheet;
    }

    public static Paper of(SheetSize sheet) {
        return switch (sheet) {
            case A4 -> A4;
            case LETTER -> LETTER;
        };
    }

    /** The word that the command line uses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The sheet that cards share, or nothing if they have a page each. */
    public Optional<SheetSize> sheet() {
        return sheet;
    }
}
