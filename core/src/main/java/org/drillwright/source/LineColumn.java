package org.drillwright.source;

/**
 * A place as people count it.
 *
 * @param line 1 or more
 * @param column 1 or more, in code points
 */
public record LineColumn(int line, int column) {}
