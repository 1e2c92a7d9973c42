package org.drillwright.print.frame;

/** A piece of an outline, from where the piece before it ended. Lengths are points. */
public sealed interface Segment {

    /** This piece, shifted by so many points to the right and down. */
    Segment moved(double dx, double dy);

    /** Begins here. */
    record Start(double x, double y) implements Segment {
        @Override
        public Segment moved(double dx, double dy) {
            return new Start(x + dx, y + dy);
        }
    }

    /** Straight to here. */
    record To(double x, double y) implements Segment {
        @Override
        public Segment moved(double dx, double dy) {
            return new To(x + dx, y + dy);
        }
    }

    /** A cubic Bézier curve with two control points, to (x, y). */
    record Curve(double x1, double y1, double x2, double y2, double x, double y) implements Segment {
        @Override
        public Segment moved(double dx, double dy) {
            return new Curve(x1 + dx, y1 + dy, x2 + dx, y2 + dy, x + dx, y + dy);
        }

        /** Pictures have thousands, and what a record works out by itself takes long until it is compiled. */
        @Override
        public boolean equals(Object other) {
            return other instanceof Curve curve
                    && Double.compare(x, curve.x) == 0
                    && Double.compare(y, curve.y) == 0
                    && Double.compare(x1, curve.x1) == 0
                    && Double.compare(y1, curve.y1) == 0
                    && Double.compare(x2, curve.x2) == 0
                    && Double.compare(y2, curve.y2) == 0;
        }

        @Override
        public int hashCode() {
            return 31 * (31 * Double.hashCode(x) + Double.hashCode(y)) + Double.hashCode(x1);
        }
    }
}
