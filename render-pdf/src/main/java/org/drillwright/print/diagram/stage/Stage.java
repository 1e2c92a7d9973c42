package org.drillwright.print.diagram.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.figure.Eye;
import org.drillwright.print.diagram.figure.Figure;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.pose.Crossing;
import org.drillwright.print.pose.Meeting;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Trajectory;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;

/** The two, or the one, with their blades and the signs at them; without the floor. The origin is that of the world. */
final class Stage {

    /** The outer part of a blade that can lie behind somebody. */
    private static final double FOIBLE = 0.45;

    private static final int SAMPLES = 12;

    private final Pose pose;
    private final Eye eye;
    private final Gauge gauge;
    private final MotionSigns signs;

    Stage(Pose pose, Gauge gauge) {
        this.pose = pose;
        this.gauge = gauge;
        this.eye = new Eye(Camera.oblique(), gauge.scale());
        this.signs = new MotionSigns(gauge);
    }

    Eye eye() {
        return eye;
    }

    static List<PosedBody> people(Pose pose) {
        return pose instanceof Pose.Pair pair
                ? List.of(pair.leader(), pair.follower())
                : List.of(((Pose.Alone) pose).person());
    }

    static Optional<Meeting> meeting(Pose pose) {
        return pose instanceof Pose.Pair pair ? Optional.of(pair.meeting()) : Optional.empty();
    }

    List<Mark> draw() {
        List<Mark> marks = new ArrayList<>();
        if (pose instanceof Pose.Alone alone) {
            alone.pad().ifPresent(foot -> marks.add(new Mark.Named("pad", pad(foot, alone.person()))));
        }
        List<PosedBody> far = farFirst();
        List<PosedBody> behind = far.stream().filter(this::passesBehind).toList();
        behind.forEach(person -> marks.addAll(figure(person).foible(FOIBLE)));
        far.forEach(person -> marks.add(new Mark.Named(person.side().word(), body(person))));
        List<PosedBody> swords = new ArrayList<>(far);
        crossing().ifPresent(crossing -> swords.sort(Comparator.comparing(one -> one.side() == crossing.nearer())));
        swords.forEach(person -> marks.add(new Mark.Named(
                "sword of the " + person.side().word(), figure(person).sword(behind.contains(person) ? FOIBLE : 1))));
        if (!gauge.isSmall()) {
            pose.ways().forEach(way -> marks.add(new Mark.Named("way", way(way))));
        }
        marks.addAll(signs());
        return marks;
    }

    private Figure figure(PosedBody person) {
        return new Figure(person, pose.weapon(), eye, gauge);
    }

    /** What is not known of a person has a question mark on it. */
    private List<Mark> body(PosedBody person) {
        List<Mark> marks = new ArrayList<>(figure(person).body());
        boolean black = person.side() == Side.LEADER;
        double size = 6.5 * gauge.mark();
        if (!person.feetKnown()) {
            Dot middle = eye.see(person.trunk().pelvis().towards(person.trunk().shoulders(), 0.45));
            marks.add(new Mark.Named("unknown", signs.question(middle, size, black)));
        } else if (person.swordArm().isEmpty()) {
            Dot shoulder = eye.see(
                    person.swordShoulder().plus(person.ahead().times(0.28)).plus(Point.UP.times(-0.05)));
            marks.add(new Mark.Named("unknown", signs.question(shoulder, size, false)));
        }
        return marks;
    }

    private List<PosedBody> farFirst() {
        return people(pose).stream()
                .sorted(Comparator.comparingDouble(
                        (PosedBody person) -> -eye.depth(person.trunk().pelvis())))
                .toList();
    }

    private Optional<Crossing> crossing() {
        Optional<Meeting> meeting = meeting(pose);
        if (meeting.isEmpty()) {
            return Optional.empty();
        }
        if (meeting.get() instanceof Meeting.Parried parried) {
            return Optional.of(parried.crossing());
        }
        if (meeting.get() instanceof Meeting.Engaged engaged) {
            return Optional.of(engaged.crossing());
        }
        if (meeting.get() instanceof Meeting.Beaten beaten) {
            return Optional.of(beaten.contact());
        }
        return meeting.get() instanceof Meeting.Landed landed ? landed.held() : Optional.empty();
    }

    /** Whether the outer part of a blade lies behind the trunk of the other. */
    private boolean passesBehind(PosedBody person) {
        if (person.blade().isEmpty()
                || meeting(pose).filter(Meeting.Landed.class::isInstance).isPresent()) {
            return false;
        }
        Blade blade = person.blade().get();
        return people(pose).stream()
                .filter(other -> other.side() != person.side())
                .anyMatch(other -> {
                    List<Dot> edge = figure(other).edge();
                    double depth = eye.depth(figure(other).spine());
                    return Stream.iterate(SAMPLES / 2, at -> at + 1)
                            .limit(SAMPLES / 2 + 1)
                            .map(at -> blade.at(at / (double) SAMPLES))
                            .anyMatch(point -> eye.depth(point) > depth && contains(edge, eye.see(point)));
                });
    }

    /** By the crossings of a ray with the edge. */
    private static boolean contains(List<Dot> edge, Dot dot) {
        boolean inside = false;
        for (int at = 0; at < edge.size(); at++) {
            Dot a = edge.get(at);
            Dot b = edge.get((at + 1) % edge.size());
            if ((a.y() > dot.y()) != (b.y() > dot.y())
                    && dot.x() < a.x() + (dot.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
        }
        return inside;
    }

    private List<Mark> way(Trajectory way) {
        return signs.arrow(way.points().stream().map(eye::see).toList());
    }

    private List<Mark> signs() {
        if (pose instanceof Pose.Alone alone) {
            return alone.hit()
                    .map(hit -> List.<Mark>of(new Mark.Named("star", signs.star(eye.see(hit), false))))
                    .orElse(List.of());
        }
        Meeting meeting = meeting(pose).orElseThrow();
        if (meeting instanceof Meeting.Landed landed) {
            boolean onBlack = landed.by() == Side.FOLLOWER;
            return List.of(
                    new Mark.Named("star", signs.star(eye.see(landed.target().seen()), onBlack)));
        }
        if (meeting instanceof Meeting.Parried parried) {
            return List.of(new Mark.Named(
                    "ticks", signs.ticks(eye.see(parried.crossing().at()), 3)));
        }
        if (meeting instanceof Meeting.FallsShort falls) {
            return rest(falls.tip(), falls.target().seen());
        }
        if (meeting instanceof Meeting.Evaded evaded) {
            return rest(evaded.tip(), evaded.target().seen());
        }
        if (meeting instanceof Meeting.Engaged engaged) {
            return List.of(
                    new Mark.Named("ring", signs.ring(eye.see(engaged.crossing().at()))));
        }
        return meeting instanceof Meeting.Beaten beaten ? beaten(beaten) : List.of();
    }

    /** From the point to where it would have gone. */
    private List<Mark> rest(Point tip, Point target) {
        List<Mark> marks = new ArrayList<>();
        Dot from = eye.see(tip);
        Dot to = eye.see(target);
        double gap = 1.2 * gauge.mark();
        if (from.distance(to) > 2 * gap) {
            Dot along = to.minus(from).unit();
            marks.add(new Mark.Named(
                    "rest",
                    signs.dashes(
                            from.plus(along.times(gap)),
                            to.minus(along.times(gap)),
                            signs.thin(),
                            1.1 * gauge.mark())));
        }
        marks.add(new Mark.Named("ring", signs.ring(to)));
        return marks;
    }

    private List<Mark> beaten(Meeting.Beaten beaten) {
        Dot bell = eye.see(beaten.before().bell());
        Dot old = eye.see(beaten.before().tip());
        List<Mark> marks = new ArrayList<>(signs.dashes(bell, old, signs.thin(), 1.3 * gauge.mark()));
        PosedBody other = people(pose).get(beaten.by() == Side.LEADER ? 1 : 0);
        other.blade().ifPresent(blade -> {
            Dot now = eye.see(blade.tip());
            Dot hand = eye.see(blade.bell());
            Dot middle = old.towards(now, 0.5);
            Dot out = middle.minus(hand).unit().times(0.12 * old.distance(now));
            Dot from = old.towards(now, 0.12);
            Dot to = old.towards(now, 0.86);
            marks.add(new Mark.Named("way", signs.arrow(Smooth.sampled(List.of(from, middle.plus(out), to), 4))));
        });
        marks.add(new Mark.Named("ticks", signs.ticks(eye.see(beaten.contact().at()), 4)));
        return marks;
    }

    /** A post with a cushion at the height of the breast. */
    private List<Mark> pad(Point foot, PosedBody person) {
        Dot floor = eye.see(foot);
        Dot top = eye.see(foot.plus(Point.UP.times(1.85)));
        Dot face = eye.see(foot.minus(person.ahead().times(0.13)).plus(Point.UP.times(1.45)));
        Dot low = eye.see(foot.minus(person.ahead().times(0.13)).plus(Point.UP.times(0.95)));
        double width = 1.3 * gauge.mark();
        List<Dot> cushion = List.of(new Dot(floor.x(), face.y()), face, low, new Dot(floor.x(), low.y()));
        return List.of(
                new Mark.Line(floor.x(), top.y(), floor.x(), floor.y(), width, Ink.BLACK),
                new Mark.Contour(Smooth.straight(cushion), 1.2 * signs.thin(), Ink.BLACK));
    }
}
