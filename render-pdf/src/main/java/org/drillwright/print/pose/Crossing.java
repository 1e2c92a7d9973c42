package org.drillwright.print.pose;

import org.drillwright.model.Side;
import org.drillwright.print.pose.body.Point;

/**
 * Where blades cross.
 *
 * @param nearer whose blade is nearer to the eye
 */
public record Crossing(Point at, Side nearer) {}
