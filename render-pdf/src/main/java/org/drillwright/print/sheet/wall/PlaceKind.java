package org.drillwright.print.sheet.wall;

/** Where a pair works: a place of the hall, or a post of two lines. */
public enum PlaceKind {
    PLACE,
    POST
}
