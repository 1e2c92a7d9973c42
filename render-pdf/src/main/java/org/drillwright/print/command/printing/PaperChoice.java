package org.drillwright.print.command.printing;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.SheetSize;
import org.drillwright.wording.Message;

/** What cards are printed on. */
public enum PaperChoice {
    A4(Optional.of(SheetSize.A4)),
    A3(Optional.of(SheetSize.A3)),
    LETTER(Optional.of(SheetSize.LETTER)),
    LEGAL(Optional.of(SheetSize.LEGAL)),
    /** A page as large as the card: one to a page. */
    CARD(Optional.empty());

    private final Optional<SheetSize> sheet;

    PaperChoice(Optional<SheetSize> sheet) {
        this.sheet = sheet;
    }

    public static PaperChoice of(SheetSize sheet) {
        return switch (sheet) {
            case A4 -> A4;
            case A3 -> A3;
            case LETTER -> LETTER;
            case LEGAL -> LEGAL;
        };
    }

    /** The word that the command line uses. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** As it is said in a sentence. */
    public Message title() {
        return switch (this) {
            case A4, A3 -> Message.plain(name());
            case LETTER -> Message.plain("Letter");
            case LEGAL -> Message.plain("Legal");
            case CARD -> Message.of(PaperChoice.class, "paper.the.cards.own.size");
        };
    }

    /** The sheet that cards share, or nothing if they have a page each. */
    public Optional<SheetSize> sheet() {
        return sheet;
    }
}
