package org.drillwright.print.layout.fit;

/**
 * A size of type, in points.
 *
 * @param leading from baseline to baseline
 */
public record TypeSize(double size, double leading) {}
