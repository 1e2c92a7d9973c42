package org.drillwright.print.frame;

/** What a part is to its reader. */
public enum Role {
    CARD,
    TITLE,
    PARAGRAPH,
    TABLE,
    ROW,
    COLUMN_HEAD,
    ROW_HEAD,
    CELL
}
