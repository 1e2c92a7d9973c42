package org.drillwright.print.diagram.figure;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Weapon;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.Hull;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.curve.Tube;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Point;

/** A blade with its bell, and the glove that holds it. */
final class SwordShape {

    private static final int SAMPLES = 20;

    /** How deep the bell is, in metres, and how much narrower it is in front. */
    private static final double DEPTH = 0.032;

    private static final double NARROWER = 0.55;

    /** Points a metre from which there is room for a knuckle bow. */
    private static final double BOW = 30;

    private final Weapon weapon;
    private final Blade blade;
    private final Eye eye;
    private final Gauge gauge;
    private final Tone tone;

    SwordShape(Weapon weapon, Blade blade, Eye eye, Gauge gauge, Tone tone) {
        this.weapon = weapon;
        this.blade = blade;
        this.eye = eye;
        this.gauge = gauge;
        this.tone = tone;
    }

    /** A stretch of the blade in a white halo, 0 being the bell and 1 the end. */
    List<Mark> blade(double from, double to) {
        List<Tube.Disc> discs = new ArrayList<>();
        int steps = isStraight() ? 2 : 7;
        for (int at = 0; at <= steps; at++) {
            double share = from + (to - from) * at / steps;
            discs.add(new Tube.Disc(eye.see(blade.at(share)), half(share)));
        }
        Tube tube = new Tube(discs);
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Contour(tube.closed(), 2 * gauge.halo(), Ink.WHITE));
        marks.add(Mark.Shape.filled(tube.closed(), Ink.BLACK));
        if (to == 1 && weapon != Weapon.SABRE) {
            Dot tip = eye.see(blade.tip());
            marks.add(
                    Mark.Shape.filled(Outline.circle(tip.x(), tip.y(), 1.15 * gauge.foible() * heavier()), Ink.BLACK));
        }
        return marks;
    }

    private boolean isStraight() {
        Point middle = blade.bell().towards(blade.tip(), 0.5);
        return blade.at(0.5).distance(middle) < 0.004;
    }

    private double half(double share) {
        return heavier() * (gauge.forte() + share * (gauge.foible() - gauge.forte())) / 2;
    }

    private double heavier() {
        return weapon == Weapon.EPEE ? 1.25 : 1;
    }

    /** From a third up the forearm to the bell. */
    BodyPart glove(Arm arm) {
        Point hand = arm.wrist().towards(blade.bell(), 0.75);
        return BodyPart.whole(
                new Tube(List.of(
                        disc(arm.wrist().towards(arm.elbow(), 1.0 / 3), 0.054),
                        disc(arm.wrist(), 0.046),
                        disc(arm.wrist().towards(hand, 0.6), 0.050),
                        disc(hand, 0.042))),
                tone.contrast());
    }

    private Tube.Disc disc(Point centre, double radius) {
        return new Tube.Disc(eye.see(centre), radius * eye.scale() * (1 + gauge.fat()));
    }

    BodyPart bell() {
        double radius = radius() * (1 + 1.2 * gauge.fat());
        List<Dot> dots = new ArrayList<>(rim(blade.bell().minus(direction().times(DEPTH)), radius));
        dots.addAll(rim(blade.bell(), NARROWER * radius));
        return BodyPart.whole(Smooth.closed(Hull.of(dots)), tone.cloth());
    }

    /** The knuckle bow of a sabre, from the guard to the pommel. */
    List<Mark> bow(Arm arm, double white) {
        if (weapon != Weapon.SABRE || gauge.scale() < BOW) {
            return List.of();
        }
        Point edge = Math.abs(direction().z()) > 0.9 ? arm.wrist().minus(arm.elbow()) : Point.UP.times(-1);
        Point under = edge.squareTo(direction());
        Point guard = blade.bell().minus(direction().times(DEPTH)).plus(under.times(radius()));
        Point pommel = arm.wrist().plus(under.times(0.045));
        Point knuckle = guard.towards(pommel, 0.5).plus(under.times(0.03));
        List<Dot> bow = List.of(eye.see(guard), eye.see(knuckle), eye.see(pommel));
        return List.of(
                new Mark.Contour(Smooth.open(bow), 2 * gauge.line() + 2 * white, Ink.WHITE),
                new Mark.Contour(Smooth.open(bow), 1.6 * gauge.line(), Ink.BLACK));
    }

    private double radius() {
        return switch (weapon) {
            case EPEE -> 0.075;
            case SABRE -> 0.068;
            default -> 0.060;
        };
    }

    private Point direction() {
        return blade.handle().minus(blade.bell()).unit();
    }

    private List<Dot> rim(Point centre, double radius) {
        Point direction = direction();
        Point across = (Math.abs(direction.z()) < 0.9 ? Point.UP : new Point(1, 0, 0)).squareTo(direction);
        Point other = direction.cross(across);
        List<Dot> dots = new ArrayList<>();
        for (int at = 0; at < SAMPLES; at++) {
            double angle = 2 * Math.PI * at / SAMPLES;
            dots.add(eye.see(
                    centre.plus(across.times(radius * Math.cos(angle))).plus(other.times(radius * Math.sin(angle)))));
        }
        return dots;
    }
}
