package org.drillwright.print.pose.body;

/** Two bones from one joint to another: where the joint between them is, and how far the end can be. */
final class Limb {

    /** A limb is never quite straight, or the joint would not know where to bend. */
    private static final double STRAIGHT = 0.9985;

    private Limb() {}

    /** The nearest place to a wanted end that the bones reach. */
    static Point reach(Point from, Point wanted, double first, double second) {
        double most = STRAIGHT * (first + second);
        double distance = from.distance(wanted);
        return distance <= most ? wanted : from.towards(wanted, most / distance);
    }

    /**
     * The joint between two bones.
     *
     * @param to within reach
     * @param pole the direction in which the joint bends, not along the limb
     */
    static Point joint(Point from, Point to, double first, double second, Point pole) {
        double distance = from.distance(to);
        double along = (first * first - second * second + distance * distance) / (2 * distance);
        double off = Math.sqrt(Math.max(0, first * first - along * along));
        Point axis = to.minus(from).unit();
        return from.plus(axis.times(along)).plus(pole.squareTo(axis).times(off));
    }
}
