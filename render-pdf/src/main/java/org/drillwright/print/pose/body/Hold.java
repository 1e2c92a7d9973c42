package org.drillwright.print.pose.body;

/**
 * Where the sword hand and the blade are.
 *
 * @param wrist from the shoulder of the sword arm: ahead, outside, up, in metres
 * @param up how far the blade points up, in degrees
 * @param out how far it points to the outside, in degrees
 */
public record Hold(Point wrist, double up, double out) {

    public static Hold of(double ahead, double outside, double height, double up, double out) {
        return new Hold(new Point(ahead, outside, height), up, out);
    }

    /** The blade turned further. */
    public Hold turned(double further, double furtherOut) {
        return new Hold(wrist, up + further, out + furtherOut);
    }

    /** The hand elsewhere, by so much ahead, outside and up. */
    public Hold moved(double ahead, double outside, double height) {
        return new Hold(wrist.plus(new Point(ahead, outside, height)), up, out);
    }

    /** The direction of the blade: ahead, outside, up. */
    public Point direction() {
        double a = Math.toRadians(up);
        double b = Math.toRadians(out);
        return new Point(Math.cos(a) * Math.cos(b), Math.cos(a) * Math.sin(b), Math.sin(a));
    }
}
