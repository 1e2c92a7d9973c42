package org.drillwright.print.diagram.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Line;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.figure.Bust;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pose.Meeting;
import org.drillwright.print.pose.Place;
import org.drillwright.print.pose.Trajectory;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;

/** One person as the partner sees that one, in a frame: the four lines, those closed hatched behind, and where the stroke went. */
final class Inset {

    private static final double WIDTH = 0.92;

    /** How much larger than in the picture of the two. */
    private static final double LARGER = 1.18;

    /** Where high and low part, as a share of the spine; at sabre, where the head ends. */
    private static final double WAIST = 0.47;

    private static final double NECK = 1.02;

    /** How far the middle of the frame is to the side of the sword, in metres, so that the hand has room. */
    private static final double ASIDE = 0.10;

    private final PosedBody person;
    private final PosedBody stood;
    private final Weapon weapon;
    private final Attacked attacked;
    private final Gauge gauge;
    private final MotionSigns signs;
    private final Bust bust;
    private final Rectangle frame;
    private final TargetLines lines;

    /**
     * @param stood the same person as the lines were when the stroke came: another than {@code person} if it was evaded
     */
    Inset(PosedBody person, PosedBody stood, Weapon weapon, Attacked attacked, Gauge gauge) {
        this.person = person;
        this.stood = stood;
        this.weapon = weapon;
        this.attacked = attacked;
        this.gauge = gauge;
        this.signs = new MotionSigns(gauge);
        double scale = LARGER * Math.max(gauge.scale(), Gauge.LEAST_SCALE);
        this.bust = new Bust(person, weapon, scale, gauge);
        Bust before = new Bust(stood, weapon, scale, gauge);
        Point spine = stood.trunk().shoulders();
        double middle = see(spine.plus(person.outside().times(ASIDE))).x();
        Rectangle sides = bust.sides();
        double room = WIDTH * scale / 2 - gauge.line() - gauge.mark();
        double x = Math.min(Math.max(middle, sides.right() - room), sides.x() + room) - WIDTH * scale / 2;
        double clear = gauge.line() + 0.5 * gauge.mark();
        double top = Math.min(bust.top(), before.top()) - clear;
        double hand = person.equals(stood) ? top : sides.bottom();
        double bottom = Math.max(hand, Math.max(bust.bottom(), before.bottom())) + clear;
        this.frame = new Rectangle(x, top, WIDTH * scale, bottom - top);
        double level = see(along(weapon == Weapon.SABRE ? NECK : WAIST)).y();
        boolean insideRight = see(person.outside()).x() < see(Point.ORIGIN).x();
        this.lines = new TargetLines(frame, see(spine).x(), level, insideRight, weapon == Weapon.SABRE);
    }

    private Point along(double share) {
        return stood.trunk().pelvis().towards(stood.trunk().shoulders(), share);
    }

    private Dot see(Point point) {
        return bust.eye().see(point);
    }

    Rectangle frame() {
        return frame;
    }

    /** Whose lines these are. */
    Side side() {
        return person.side();
    }

    List<Mark> draw(Optional<Meeting> meeting, List<Trajectory> ways) {
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Shape.filled(rounded(), Ink.WHITE));
        closed().stream()
                .sorted()
                .flatMap(line -> lines.area(line).stream())
                .forEach(area -> marks.add(new Mark.Named("closed", signs.hatch(area))));
        marks.add(new Mark.Named("lines", cross()));
        marks.add(new Mark.Named("attacked", bust.draw(frame)));
        marks.add(new Mark.Contour(rounded(), 1.25 * signs.thin(), Ink.BLACK));
        doubts(marks);
        List<Mark> gone = gauge.isSmall()
                ? List.of()
                : ways.stream().map(this::way).flatMap(Optional::stream).toList();
        marks.addAll(gone);
        meeting.ifPresent(one -> marks.addAll(signs(one, !gone.isEmpty())));
        return marks;
    }

    private Set<Line> closed() {
        return attacked.closed();
    }

    private List<Segment> rounded() {
        double r = 0.05 * frame.width();
        double left = frame.x();
        double top = frame.y();
        double right = frame.right();
        double bottom = frame.bottom();
        double c = 0.45 * r;
        return List.of(
                new Segment.Start(left + r, top),
                new Segment.To(right - r, top),
                new Segment.Curve(right - c, top, right, top + c, right, top + r),
                new Segment.To(right, bottom - r),
                new Segment.Curve(right, bottom - c, right - c, bottom, right - r, bottom),
                new Segment.To(left + r, bottom),
                new Segment.Curve(left + c, bottom, left, bottom - c, left, bottom - r),
                new Segment.To(left, top + r),
                new Segment.Curve(left, top + c, left + c, top, left + r, top));
    }

    private List<Mark> cross() {
        Rectangle part = lines.area(weapon == Weapon.SABRE ? Line.HEAD : Line.HIGH_OUTSIDE)
                .orElseThrow();
        double level = part.bottom();
        double middle = see(stood.trunk().shoulders()).x();
        double from = weapon == Weapon.SABRE ? level : frame.y();
        return List.of(
                new Mark.Line(frame.x(), level, frame.right(), level, Gauge.HAIR, Ink.BLACK),
                new Mark.Line(middle, from, middle, frame.bottom(), Gauge.HAIR, Ink.BLACK));
    }

    /** A question mark in each line of which it is not certain that the hand closes it. */
    private void doubts(List<Mark> marks) {
        double size = 3.2 * gauge.mark();
        Stream<Line> doubtful = attacked.doubtful().stream().sorted();
        doubtful.map(lines::area).flatMap(Optional::stream).forEach(area -> {
            double x = area.x() < frame.x() + 1 ? area.x() + 0.7 * size : area.right() - 0.7 * size;
            double y = area.y() < frame.y() + 1 ? area.y() + 0.8 * size : area.bottom() - 0.8 * size;
            marks.add(new Mark.Named("unknown", signs.question(new Dot(x, y), size, false)));
        });
    }

    private List<Mark> signs(Meeting meeting, boolean told) {
        if (meeting instanceof Meeting.Landed landed) {
            return shown("star", landed.target(), dot -> signs.star(dot, false));
        }
        if (meeting instanceof Meeting.Parried parried) {
            return parried(at(parried.target()), told);
        }
        if (meeting instanceof Meeting.Threatens threatens) {
            return shown("ring", threatens.target(), signs::ring);
        }
        if (meeting instanceof Meeting.FallsShort falls) {
            return shown("ring", falls.target(), signs::ring);
        }
        if (meeting instanceof Meeting.Evaded evaded) {
            return shown("ring", evaded.target(), signs::ring);
        }
        if (meeting instanceof Meeting.NotKnown) {
            Dot middle = new Dot(see(along(0.6)).x(), see(along(0.6)).y());
            return List.of(new Mark.Named("unknown stroke", signs.question(middle, 6 * gauge.mark(), false)));
        }
        return List.of();
    }

    /** A sign, unless its place is on the legs, which the frame does not show. */
    private List<Mark> shown(String name, Place place, Function<Dot, List<Mark>> sign) {
        Dot dot = at(place);
        return dot.y() < frame.bottom() ? List.of(new Mark.Named(name, sign.apply(dot))) : List.of();
    }

    private Dot at(Place place) {
        return see(place.faced());
    }

    /** The point, and where it was carried; a circular parry has told the way already. */
    private List<Mark> parried(Dot dot, boolean told) {
        List<Mark> marks = new ArrayList<>();
        if (!told && !gauge.isSmall()) {
            carried(dot).ifPresent(to -> marks.add(new Mark.Named("carried", signs.arrow(List.of(dot, to)))));
        }
        marks.add(new Mark.Named("point", signs.dot(dot)));
        return marks;
    }

    /** Towards the outer corner of the line that is closed. */
    private Optional<Dot> carried(Dot from) {
        Stream<Line> met = attacked.met().stream();
        return Stream.concat(closed().stream().sorted(), met)
                .map(lines::area)
                .flatMap(Optional::stream)
                .findFirst()
                .map(area -> {
                    double x = area.x() > frame.x() + 1 ? area.right() : area.x();
                    double y = area.y() > frame.y() + 1 ? area.bottom() : area.y();
                    Dot corner = new Dot(x, y);
                    if (area.width() > 0.9 * frame.width()) {
                        corner = new Dot(from.x() - 0.1 * frame.width(), y);
                    }
                    Dot way = corner.minus(from).unit();
                    double room = Math.min(
                            room(from.x(), way.x(), frame.x(), frame.right()),
                            room(from.y(), way.y(), frame.y(), frame.bottom()));
                    return from.plus(way.times(Math.min(6.2 * gauge.mark(), room - gauge.mark())));
                });
    }

    private static double room(double from, double way, double low, double high) {
        return Math.abs(way) < 1e-6 ? Double.POSITIVE_INFINITY : ((way > 0 ? high : low) - from) / way;
    }

    /** The way of the point, as far as it lies in the frame. */
    private Optional<Mark> way(Trajectory way) {
        double edge = 0.8 * gauge.mark();
        List<Dot> inside = new ArrayList<>();
        for (Point point : way.points()) {
            Dot dot = see(point);
            boolean in = dot.x() > frame.x() + edge && dot.x() < frame.right() - edge;
            if (in && dot.y() > frame.y() + edge && dot.y() < frame.bottom() - edge) {
                inside.add(dot);
            }
        }
        boolean seen = inside.size() > 2 && Smooth.sampled(inside, 2).size() > 3;
        return seen ? Optional.of(new Mark.Named("way", signs.arrow(inside))) : Optional.empty();
    }
}
