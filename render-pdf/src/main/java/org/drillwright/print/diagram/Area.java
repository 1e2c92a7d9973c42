package org.drillwright.print.diagram;

/** A rectangle of a target, in units. */
record Area(double left, double top, double right, double bottom) {

    double middleX() {
        return (left + right) / 2;
    }

    double middleY() {
        return (top + bottom) / 2;
    }

    double[] corners() {
        return new double[] {left, top, right, top, right, bottom, left, bottom};
    }
}
