package org.drillwright.print.frame;

/** What a part is to its reader. */
public enum Role {
    CARD,
    TITLE,
    PARAGRAPH,
    LIST,
    ITEM,
    ITEM_NAME,
    ITEM_BODY,
    TABLE,
    ROW,
    COLUMN_HEAD,
    ROW_HEAD,
    CELL
}
