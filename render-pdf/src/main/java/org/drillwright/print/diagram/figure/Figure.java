package org.drillwright.print.diagram.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.model.Weapon;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.curve.Tube;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Ball;
import org.drillwright.print.pose.body.Head;
import org.drillwright.print.pose.body.Leg;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Trunk;

/** A person on paper, in layers, so that others can lie between them. */
public final class Figure {

    /** The share of a leg and of an arm that lies in the trunk, without an outline. */
    private static final double LEG_ROOT = 0.08;

    private static final double ARM_ROOT = 0.22;

    private final PosedBody person;
    private final Weapon weapon;
    private final Eye eye;
    private final Gauge gauge;
    private final Tone tone;
    private final Weld weld;

    public Figure(PosedBody person, Weapon weapon, Eye eye, Gauge gauge) {
        this(person, weapon, eye, gauge, Tone.of(person.side()));
    }

    Figure(PosedBody person, Weapon weapon, Eye eye, Gauge gauge, Tone tone) {
        this.person = person;
        this.weapon = weapon;
        this.eye = eye;
        this.gauge = gauge;
        this.tone = tone;
        this.weld = new Weld(gauge);
    }

    /** All but the sword arm and what it holds. */
    public List<Mark> body() {
        List<Leg> legs = legs();
        List<BodyPart> shins = legs.stream().map(this::leg).toList();
        List<BodyPart> shoes = legs.stream().map(this::shoe).toList();
        BodyPart trunk = trunk();
        BodyPart sleeve = arm(person.rearArm());
        BodyPart hand = hand(person.rearArm());
        List<BodyPart> parts = new ArrayList<>(shins);
        parts.addAll(shoes);
        parts.addAll(List.of(sleeve, hand, trunk));
        parts.addAll(head(person.head()).parts());
        person.swordArm().ifPresent(arm -> parts.add(arm(arm)));
        List<Mark> marks = new ArrayList<>(weld.weld(parts));
        List<Mark> rear = rear(sleeve, hand);
        boolean farArm = eye.depth(person.rearArm().elbow()) > eye.depth(spine());
        if (farArm) {
            marks.addAll(rear);
        }
        for (int at = 0; at < legs.size(); at++) {
            marks.addAll(weld.over(shins.get(at)));
            marks.addAll(extremity(shoes.get(at)));
        }
        marks.addAll(weld.over(trunk));
        if (!farArm) {
            marks.addAll(rear);
        }
        marks.addAll(head(person.head()).draw(weld));
        return marks;
    }

    /** A hand or a shoe: of one ink with a black limb, and so without a seam. */
    private List<Mark> extremity(BodyPart part) {
        return tone == Tone.WHITE ? weld.over(part) : weld.on(part);
    }

    /** Without legs, and of the rear arm no more than hangs from the shoulder. */
    List<Mark> bust() {
        List<Ball> sleeve = sleeve(person.rearArm());
        BodyPart trunk = trunk();
        BodyPart upper = BodyPart.limb(tube(sleeve), 1.4 * ARM_ROOT, gauge.halo(), tone.cloth());
        List<BodyPart> parts = new ArrayList<>(List.of(upper, trunk));
        parts.addAll(head(person.head()).parts());
        person.swordArm().ifPresent(arm -> parts.add(arm(arm)));
        List<Mark> marks = new ArrayList<>(weld.weld(parts));
        boolean behind = eye.depth(person.rearArm().elbow()) > eye.depth(spine());
        marks.addAll(weld.over(behind ? trunk : upper));
        marks.addAll(head(person.head()).draw(weld));
        return marks;
    }

    /** Hanging, where the arm is raised and would leave the view. */
    private List<Ball> sleeve(Arm arm) {
        Point hanging = arm.shoulder()
                .minus(person.outside().times(0.07))
                .minus(person.ahead().times(0.06))
                .minus(Point.UP.times(0.30));
        boolean raised = arm.elbow().z() > hanging.z() + 0.1;
        Arm shown = raised ? new Arm(arm.shoulder(), hanging, arm.wrist()) : arm;
        return shown.balls(person.trunk().shoulders()).subList(0, 3);
    }

    private List<Mark> rear(BodyPart sleeve, BodyPart hand) {
        List<Mark> marks = new ArrayList<>(weld.over(sleeve));
        marks.addAll(extremity(hand));
        if (person.maskInHand()) {
            Head mask = new Head(
                    person.rearArm().wrist().plus(person.ahead().times(0.07)),
                    person.head().looking(),
                    person.head().up(),
                    true);
            marks.addAll(head(mask).draw(weld));
        }
        return marks;
    }

    /** The sword arm, the blade, the glove and the bell. */
    public List<Mark> sword() {
        return sword(1);
    }

    /**
     * The same with the blade cut off.
     *
     * @param length of the blade, 1 being all of it
     */
    public List<Mark> sword(double length) {
        List<Mark> marks = new ArrayList<>();
        person.swordArm().ifPresent(arm -> {
            marks.addAll(weld.over(arm(arm)));
            person.blade()
                    .map(blade -> new SwordShape(weapon, blade, eye, gauge, tone))
                    .ifPresentOrElse(
                            sword -> marks.addAll(held(sword, arm, length)), () -> marks.addAll(extremity(hand(arm))));
        });
        return marks;
    }

    private List<Mark> held(SwordShape sword, Arm arm, double length) {
        List<Mark> marks = new ArrayList<>();
        if (length > 0) {
            marks.add(new Mark.Named("blade", sword.blade(0, length)));
        }
        marks.addAll(weld.over(sword.glove(arm), gauge.halo()));
        marks.addAll(sword.bow(arm, gauge.halo()));
        marks.addAll(weld.over(sword.bell(), gauge.halo()));
        return marks;
    }

    /** The outer part of the blade alone, for where it passes behind somebody. */
    public List<Mark> foible(double from) {
        return person.blade()
                .map(blade -> new SwordShape(weapon, blade, eye, gauge, tone).blade(from, 1))
                .orElse(List.of());
    }

    /** Where the trunk is on paper: dots on its edge. */
    public List<Dot> edge() {
        return InkedArea.dots(trunk().outline());
    }

    /** Where the head ends. */
    public double top() {
        return new HeadShape(person.head(), eye, gauge, tone).top();
    }

    public Point spine() {
        return person.trunk().pelvis().towards(person.trunk().shoulders(), 0.7);
    }

    private List<Leg> legs() {
        return Stream.of(person.front(), person.rear())
                .sorted(Comparator.comparingDouble((Leg leg) -> -eye.depth(leg.knee())))
                .toList();
    }

    private HeadShape head(Head head) {
        return new HeadShape(head, eye, gauge, tone);
    }

    private BodyPart leg(Leg leg) {
        return BodyPart.limb(tube(leg.balls()), LEG_ROOT, gauge.halo(), tone.cloth());
    }

    private BodyPart shoe(Leg leg) {
        Point along = leg.toe().minus(leg.heel()).unit();
        List<Ball> shoe = List.of(
                new Ball(raised(leg.heel().plus(along.times(0.040)), 0.040), 0.040),
                new Ball(raised(leg.heel().towards(leg.toe(), 0.42), 0.042), 0.042),
                new Ball(raised(leg.heel().towards(leg.toe(), 0.70), 0.036), 0.036),
                new Ball(raised(leg.toe().minus(along.times(0.028)), 0.028), 0.028));
        return BodyPart.whole(tube(shoe), Ink.BLACK);
    }

    private static Point raised(Point floor, double height) {
        return floor.plus(Point.UP.times(height));
    }

    private BodyPart arm(Arm arm) {
        return BodyPart.limb(tube(arm.balls(person.trunk().shoulders())), ARM_ROOT, gauge.halo(), tone.cloth());
    }

    /** A hand that is raised falls back from the wrist. */
    private BodyPart hand(Arm arm) {
        Point forearm = arm.wrist().minus(arm.elbow()).unit();
        double back = Math.max(0, forearm.z() - 0.3);
        Point along = forearm.minus(person.ahead().times(1.2 * back)).unit();
        return BodyPart.whole(
                tube(List.of(
                        new Ball(arm.wrist(), 0.030),
                        new Ball(arm.wrist().plus(along.times(0.030)), 0.034),
                        new Ball(arm.wrist().plus(along.times(0.070)), 0.040),
                        new Ball(arm.wrist().plus(along.times(0.110)), 0.033))),
                tone.cloth());
    }

    private Tube tube(List<Ball> balls) {
        double size = eye.scale() * (1 + gauge.fat());
        return new Tube(balls.stream()
                .map(ball -> new Tube.Disc(eye.see(ball.centre()), ball.radius() * size))
                .toList());
    }

    private BodyPart trunk() {
        List<Trunk.Slice> slices = person.trunk().slices();
        double size = 1 + 0.6 * gauge.fat();
        Dot bottom = eye.see(person.trunk().pelvis());
        Dot top = eye.see(person.trunk().shoulders());
        Dot across = top.minus(bottom).unit().turned();
        List<Dot> outline = new ArrayList<>();
        for (Trunk.Slice slice : slices) {
            outline.add(eye.see(slice.middle()).plus(across.times(size * half(slice, across))));
        }
        for (int at = slices.size() - 1; at >= 0; at--) {
            Trunk.Slice slice = slices.get(at);
            outline.add(eye.see(slice.middle()).minus(across.times(size * half(slice, across))));
        }
        Trunk.Slice hem = slices.get(0);
        Dot middle = eye.see(hem.middle());
        Dot down = bottom.minus(top).unit();
        double wide = half(hem, across) * size;
        outline.add(middle.minus(across.times(0.6 * wide)).plus(down.times(0.14 * wide)));
        outline.add(middle.plus(down.times(0.20 * wide)));
        outline.add(middle.plus(across.times(0.6 * wide)).plus(down.times(0.14 * wide)));
        List<Segment> closed = Smooth.closed(outline);
        return BodyPart.whole(closed, tone.cloth());
    }

    /** Half the width on paper of a slice, an ellipse in space. */
    private double half(Trunk.Slice slice, Dot across) {
        Dot origin = eye.see(Point.ORIGIN);
        double wide = eye.see(slice.width()).minus(origin).dot(across);
        double deep = eye.see(slice.depth()).minus(origin).dot(across);
        return Math.hypot(wide, deep);
    }
}
