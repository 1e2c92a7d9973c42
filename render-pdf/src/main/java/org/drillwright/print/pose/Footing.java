package org.drillwright.print.pose;

import org.drillwright.model.Side;

/**
 * A foot action of a count.
 *
 * @param forward how far the feet went, in metres; below 0 back
 */
public record Footing(Side by, FootMove.Kind kind, double forward) {}
