package org.drillwright.print.diagram.figure;

import java.util.List;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.curve.Tube;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Segment;

/**
 * A part of a person.
 *
 * @param area what it covers, filled wherever an outline winds round
 * @param outline all round it
 * @param open the stretch of the outline that is seen where it lies over what it grows out of
 * @param beside the stretch of it that has white beside it: its round ends must not cut the line of what it grows out of
 */
record BodyPart(List<Segment> area, List<Segment> outline, List<Segment> open, List<Segment> beside, Ink ink) {

    /** Grows out of what is drawn before it, behind a share of its length. */
    static BodyPart limb(Tube tube, double root, double halo, Ink ink) {
        double from = root * tube.length();
        return new BodyPart(tube.area(), tube.closed(), tube.open(from), tube.open(from + halo), ink);
    }

    /** Lies over what is drawn before it. */
    static BodyPart whole(Tube tube, Ink ink) {
        return new BodyPart(tube.area(), tube.closed(), tube.closed(), tube.closed(), ink);
    }

    static BodyPart whole(List<Segment> outline, Ink ink) {
        return new BodyPart(outline, outline, outline, outline, ink);
    }

    static BodyPart round(List<Dot> dots, Ink ink) {
        return whole(Smooth.closed(dots), ink);
    }
}
