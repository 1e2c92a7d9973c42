package org.drillwright.print.diagram.figure;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.curve.Tube;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pose.body.Head;
import org.drillwright.print.pose.body.Point;

/** A mask with its mesh, or a bare head with its hair. */
final class HeadShape {

    /** Half axes to the front, to the side and up, in metres. */
    private static final Point MASK = new Point(Head.HALF_DEPTH, Head.HALF_WIDTH, Head.HALF_HEIGHT);

    private static final Point BARE = new Point(0.098, 0.076, 0.118);

    /** The mesh of a black mask lies in a black rim. */
    private static final double IN_RIM = 0.86;

    private static final Point MESH = new Point(1, 0, -0.18);
    private static final double MESH_FROM = 0.16;

    /** The cosine of the greatest angle at which a mask is looked at from in front. */
    private static final double FACING = 0.9;

    private static final Point HAIR = new Point(-0.75, 0, 1);
    private static final double HAIR_FROM = 0.05;

    private final Head head;
    private final Eye eye;
    private final Gauge gauge;
    private final Tone tone;

    HeadShape(Head head, Eye eye, Gauge gauge, Tone tone) {
        this.head = head;
        this.eye = eye;
        this.gauge = gauge;
        this.tone = tone;
    }

    /** What is welded with the body: the mask or the head, and the nose. */
    List<BodyPart> parts() {
        if (head.masked()) {
            return List.of(mask());
        }
        return List.of(nose(), BodyPart.round(ovoid(BARE).edge(), Ink.WHITE));
    }

    private BodyPart mask() {
        return BodyPart.round(ovoid(MASK).edge(), tone.cloth());
    }

    private BodyPart nose() {
        Ovoid bare = ovoid(BARE);
        double size = gauge.scale() * (1 + gauge.fat());
        Tube nose = new Tube(List.of(
                new Tube.Disc(bare.see(new Point(0.8, 0, 0.10)), 0.018 * size),
                new Tube.Disc(bare.see(new Point(1.14, 0, -0.12)), 0.014 * size)));
        return BodyPart.whole(nose, Ink.WHITE);
    }

    /** Its highest place on paper. */
    double top() {
        return ovoid(head.masked() ? MASK : BARE).edge().stream()
                .mapToDouble(dot -> dot.y())
                .min()
                .orElseThrow();
    }

    /** Over the trunk. */
    List<Mark> draw(Weld weld) {
        List<Mark> marks = new ArrayList<>();
        if (head.masked()) {
            marks.addAll(weld.over(mask()));
            marks.addAll(mesh());
        } else {
            marks.addAll(weld.weld(parts()));
            marks.addAll(filled(ovoid(BARE).cap(HAIR, HAIR_FROM), Ink.BLACK));
        }
        return marks;
    }

    /** From in front there is nothing but mesh to be seen. */
    private List<Mark> mesh() {
        double size = tone == Tone.BLACK ? IN_RIM : 1;
        Ovoid mask = ovoid(MASK.times(size));
        boolean facing = head.looking().dot(eye.camera().away()) < -FACING;
        return filled(facing ? Smooth.closed(mask.edge()) : mask.cap(MESH, MESH_FROM), tone.contrast());
    }

    private static List<Mark> filled(List<Segment> outline, Ink ink) {
        return outline.isEmpty() ? List.of() : List.of(Mark.Shape.filled(outline, ink));
    }

    private Ovoid ovoid(Point half) {
        return new Ovoid(head, half.times(1 + 0.6 * gauge.fat()), eye);
    }
}
