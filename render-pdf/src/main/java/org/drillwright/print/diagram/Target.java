package org.drillwright.print.diagram;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.notation.Line;

/**
 * The lines of one person as the partner sees them, opposite a right-hander: the outside is on the left, the inside,
 * the side of the breast, on the right (Encyclopaedia Britannica, 11th ed., p. 593; Warford 1884, p. 10). Between
 * left-handers it is seen in a mirror. In units, from the top left corner.
 */
final class Target {

    /** Its width and height. */
    static final double SIZE = 42;

    private static final double HALF = SIZE / 2;

    private static final Map<Line, Area> THRUST = thrust();
    private static final Map<Line, Area> CUT = cut();

    private Target() {}

    static Map<Line, Area> areas(boolean sabre) {
        return sabre ? CUT : THRUST;
    }

    static Optional<Area> area(boolean sabre, Line line) {
        return Optional.ofNullable(areas(sabre).get(line));
    }

    private static Map<Line, Area> thrust() {
        Map<Line, Area> areas = new LinkedHashMap<>();
        areas.put(Line.HIGH_OUTSIDE, new Area(0, 0, HALF, HALF));
        areas.put(Line.HIGH_INSIDE, new Area(HALF, 0, SIZE, HALF));
        areas.put(Line.LOW_OUTSIDE, new Area(0, HALF, HALF, SIZE));
        areas.put(Line.LOW_INSIDE, new Area(HALF, HALF, SIZE, SIZE));
        return areas;
    }

    /** A head, a trunk of two halves, and the arm beside it. */
    private static Map<Line, Area> cut() {
        Map<Line, Area> areas = new LinkedHashMap<>();
        areas.put(Line.HEAD, new Area(17, 0, 35, 15));
        areas.put(Line.OUTSIDE, new Area(11, 17, 26, SIZE));
        areas.put(Line.INSIDE, new Area(26, 17, 41, SIZE));
        areas.put(Line.ARM, new Area(0, 19, 9, 34));
        return areas;
    }
}
