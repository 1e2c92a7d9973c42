package org.drillwright.print.pose;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.model.Side;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Width;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Head;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.PaperPoint;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Silhouette;

/** Blades that do no stroke: apart, so that nobody takes them for crossed; touching; or out of the way of a hit. */
final class BladePlay {

    /** Blades that are apart keep so far from each other on paper, in metres. */
    static final double BETWEEN = 0.10;

    /** A point keeps so far from bodies on paper. */
    private static final double FROM_BODY = 0.13;

    /** Points are held so far over the floor, in metres. */
    private static final double OVER_FLOOR = 0.12;

    private static final int STEP = 3;

    private static final double LOWERING = 1.4;

    /** How far blades touch above the middle between the bells. */
    private static final double CONTACT = 0.19;

    /** A person, and how the hand and the blade are if nothing else asks for the blade. */
    record Armed(Stand stand, Hold hold) {}

    private final double length;
    private final Camera camera;

    BladePlay(double length, Camera camera) {
        this.length = length;
        this.camera = camera;
    }

    /** On paper, from one straight blade to another; 0 if they cross. */
    static double between(Camera camera, Blade one, Blade other) {
        PaperPoint a = camera.see(one.bell());
        PaperPoint b = camera.see(one.tip());
        PaperPoint c = camera.see(other.bell());
        PaperPoint d = camera.see(other.tip());
        if (turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0) {
            return 0;
        }
        return Math.min(Math.min(away(a, c, d), away(b, c, d)), Math.min(away(c, a, b), away(d, a, b)));
    }

    private static double turn(PaperPoint a, PaperPoint b, PaperPoint c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }

    private static double away(PaperPoint spot, PaperPoint from, PaperPoint to) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        double share = ((spot.x() - from.x()) * x + (spot.y() - from.y()) * y) / (x * x + y * y);
        double on = Math.max(0, Math.min(1, share));
        return spot.distance(new PaperPoint(from.x() + on * x, from.y() + on * y));
    }

    /** Both raised or lowered as little as keeps them apart. */
    List<PosedBody> apart(Armed one, Armed other) {
        for (double back : new double[] {0, 0.08, 0.16, 0.22}) {
            Hold first = one.hold().moved(-back, 0, 0);
            Hold second = other.hold().moved(-back, 0, 0);
            Optional<List<PosedBody>> found = apart(one.stand(), first, other.stand(), second);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return List.of(one.stand().holding(one.hold(), length), other.stand().holding(other.hold(), length));
    }

    private Optional<List<PosedBody>> apart(Stand one, Hold first, Stand other, Hold second) {
        List<Silhouette> bodies = List.of(
                Silhouette.of(one.holding(first, length), camera),
                Silhouette.of(other.holding(second, length), camera));
        List<Turned> mine = turned(one, first, bodies);
        List<Turned> theirs = turned(other, second, bodies);
        double least = Double.MAX_VALUE;
        Optional<List<PosedBody>> best = Optional.empty();
        for (Turned left : mine) {
            for (Turned right : theirs) {
                double cost = left.cost() + right.cost();
                if (cost < least && between(camera, left.blade(), right.blade()) >= BETWEEN) {
                    least = cost;
                    best = Optional.of(List.of(left.person(), right.person()));
                }
            }
        }
        return best;
    }

    private record Turned(PosedBody person, double cost) {
        Blade blade() {
            return person.blade().orElseThrow();
        }
    }

    /** A blade raised and lowered, wherever its point is free of bodies. */
    private List<Turned> turned(Stand stand, Hold hold, List<Silhouette> bodies) {
        return IntStream.rangeClosed(-30, 30)
                .map(step -> step * STEP)
                .filter(turn -> Math.abs(hold.up() + turn) <= 85)
                .mapToObj(turn -> new Turned(
                        stand.holding(hold.turned(turn, 0), length),
                        turn * turn * (turn < 0 ? LOWERING * LOWERING : 1)))
                .filter(turned -> isFree(turned.blade(), bodies))
                .toList();
    }

    private boolean isFree(Blade blade, List<Silhouette> bodies) {
        return blade.tip().z() > OVER_FLOOR
                && bodies.stream()
                        .allMatch(body -> body.distance(blade.tip()) >= FROM_BODY
                                && IntStream.range(3, 10).allMatch(at -> body.distance(blade.at(at / 10.0)) > 0));
    }

    /** Both aimed through the same place; the line is named from the first one. */
    List<PosedBody> engaged(Armed one, Armed other, Line line) {
        Point middle = bell(one).towards(bell(other), 0.5);
        double up = line.height().filter(Height.LOW::equals).isPresent() ? -CONTACT : CONTACT;
        Point contact = middle.plus(Point.UP.times(up));
        double outside = line.width().filter(Width.OUTSIDE::equals).isPresent() ? -1 : 1;
        Point aside = one.stand().body().axes().outside().times(outside * Parrying.THICKNESS / 2);
        return List.of(through(one, contact.plus(aside)), through(other, contact.minus(aside)));
    }

    private static Point bell(Armed armed) {
        return armed.stand().holding(armed.hold(), 1).blade().orElseThrow().bell();
    }

    /** The hand where it is, the blade through a place. */
    PosedBody through(Armed armed, Point place) {
        Point wrist = armed.stand().body().wrist(armed.hold());
        return armed.stand().with(wrist, place.minus(wrist).unit(), length);
    }

    /** Which of two blades is nearer to the eye where they cross on paper. */
    Crossing crossing(PosedBody one, PosedBody other) {
        Blade first = one.blade().orElseThrow();
        Blade second = other.blade().orElseThrow();
        PaperPoint a = camera.see(first.bell());
        PaperPoint b = camera.see(first.tip());
        PaperPoint c = camera.see(second.bell());
        PaperPoint d = camera.see(second.tip());
        double along = turn(c, d, a) / (turn(c, d, a) - turn(c, d, b));
        double across = turn(a, b, c) / (turn(a, b, c) - turn(a, b, d));
        Point mine = first.bell().towards(first.tip(), along);
        Point theirs = second.bell().towards(second.tip(), across);
        Side nearer = camera.depth(mine) < camera.depth(theirs) ? one.side() : other.side();
        return new Crossing(mine.towards(theirs, 0.5), nearer);
    }

    /** A blade turned as little as keeps its point from a person. */
    PosedBody free(Armed armed, PosedBody other) {
        Silhouette body = Silhouette.of(other, camera);
        for (int step = 0; step <= 40; step++) {
            for (int sign : new int[] {1, -1}) {
                PosedBody person = armed.stand().holding(armed.hold().turned(sign * step * STEP, 0), length);
                if (isFree(person.blade().orElseThrow(), List.of(body))) {
                    return person;
                }
            }
        }
        return armed.stand().holding(armed.hold(), length);
    }

    /** The blade of one who is hit, turned as little as shows the blade and the arm that hit and touches nobody. */
    PosedBody passive(Armed hit, PosedBody attacker) {
        Silhouette body = Silhouette.withoutSword(attacker, camera);
        for (double wanted : new double[] {1, 0.5, 0}) {
            for (int step = 0; step <= 40; step++) {
                for (int sign : new int[] {1, -1}) {
                    Hold hold = hit.hold().turned(sign * step * STEP, 0);
                    PosedBody person = hit.stand().holding(hold, length);
                    Blade blade = person.blade().orElseThrow();
                    if (Math.abs(hold.up()) <= 85
                            && blade.tip().z() >= OVER_FLOOR
                            && body.distance(blade.tip()) >= FROM_BODY * wanted
                            && shows(blade, attacker, wanted)) {
                        return person;
                    }
                }
            }
        }
        return hit.stand().holding(hit.hold(), length);
    }

    /** Whether blade and arm that hit are not crossed by a blade on paper, nor the head covered. */
    private boolean shows(Blade blade, PosedBody attacker, double share) {
        Blade other = attacker.blade().orElseThrow();
        for (int step = 0; step < 8; step++) {
            Blade part = Blade.straight(other.at(step / 8.0), other.at((step + 1) / 8.0));
            if (between(camera, blade, part) <= 0.04 * share) {
                return false;
            }
        }
        Arm arm = attacker.swordArm().orElseThrow();
        List<Blade> bones = List.of(
                Blade.straight(arm.shoulder(), arm.elbow()),
                Blade.straight(arm.elbow(), arm.wrist()),
                Blade.straight(arm.wrist(), other.bell()));
        double head = away(camera.see(attacker.head().centre()), camera.see(blade.bell()), camera.see(blade.tip()));
        return bones.stream().allMatch(bone -> between(camera, blade, bone) >= BETWEEN * share)
                && head >= Head.HALF_DEPTH + BETWEEN * share;
    }
}
