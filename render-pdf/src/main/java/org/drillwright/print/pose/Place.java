package org.drillwright.print.pose;

import org.drillwright.print.pose.body.Point;

/**
 * A place on a body that a stroke goes to.
 *
 * @param seen on the side of the body that the eye sees; where the picture of the two has it
 * @param normal out of the body there, one metre long
 * @param faced as the partner sees it; where the inset has it
 */
public record Place(Point seen, Point normal, Point faced) {}
