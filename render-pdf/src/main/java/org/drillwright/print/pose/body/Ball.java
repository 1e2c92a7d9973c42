package org.drillwright.print.pose.body;

/**
 * A part of a body: limbs are chains of balls with what lies between them.
 *
 * @param radius in metres
 */
public record Ball(Point centre, double radius) {}
