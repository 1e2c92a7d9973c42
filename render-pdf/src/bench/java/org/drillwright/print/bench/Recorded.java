package org.drillwright.print.bench;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Role;
import org.drillwright.print.text.Typeface;

/** What a record of cards is made of. */
final class Recorded {

    static final int END = 0;
    static final int PAGE = 1;
    static final int PAGE_END = 2;
    static final int ELEMENT = 3;
    static final int ELEMENT_END = 4;
    static final int MARKED = 5;
    static final int ARTIFACT = 6;
    static final int MARKED_END = 7;
    static final int TEXT = 8;
    static final int LINE = 9;
    static final int SHAPE = 10;
    static final int CONTOUR = 11;
    static final int FORM = 12;
    static final int FORM_END = 13;
    static final int SHOW = 14;

    private Recorded() {}

    static String type(Role role) {
        return switch (role) {
            case CARD -> "Sect";
            case TITLE -> "H1";
            case PARAGRAPH -> "P";
            case LIST -> "L";
            case ITEM -> "LI";
            case ITEM_NAME -> "Lbl";
            case ITEM_BODY -> "LBody";
            case TABLE -> "Table";
            case ROW -> "TR";
            case COLUMN_HEAD, ROW_HEAD -> "TH";
            case CELL -> "TD";
        };
    }

    static String scope(Role role) {
        return switch (role) {
            case COLUMN_HEAD -> "Column";
            case ROW_HEAD -> "Row";
            case CARD, TITLE, PARAGRAPH, LIST, ITEM, ITEM_NAME, ITEM_BODY, TABLE, ROW, CELL -> "";
        };
    }

    /** Strings and shifts by turns, beginning and ending with a string. */
    static List<Object> pieces(String text, Typeface face) {
        List<Object> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        int before = -1;
        for (int codePoint : text.codePoints().toArray()) {
            double shift = before < 0 ? 0 : face.kerning(before, codePoint);
            if (shift != 0) {
                pieces.add(piece.toString());
                pieces.add((float) (shift * -1000));
                piece.setLength(0);
            }
            piece.appendCodePoint(codePoint);
            before = codePoint;
        }
        pieces.add(piece.toString());
        return pieces;
    }
}
