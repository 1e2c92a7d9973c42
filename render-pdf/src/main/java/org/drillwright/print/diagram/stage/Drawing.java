package org.drillwright.print.diagram.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.diagram.figure.Eye;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Meeting;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Scene;
import org.drillwright.print.pose.body.PosedBody;

/**
 * The picture of a count, so wide: the two on the floor, and over whoever has the lower head the view of the one attacked,
 * as low as the two let it.
 *
 * @param height in points
 * @param origin where the world's origin lies, in points from the left edge
 * @param floor where the line lies on which they stand, in points from the top
 * @param marks from the top left corner
 */
public record Drawing(double height, double origin, double floor, List<Mark> marks) {

    /** Pictures are pushed into their box by whole steps of so many points. */
    private static final double STEP = 0.5;

    /** Heads so near to each other in height are level, in points. */
    private static final double LEVEL = 1;

    public Drawing {
        marks = List.copyOf(marks);
    }

    /** @param width in points */
    public static Drawing of(Scene scene, Pose pose, double width) {
        return new Laying(scene, pose, width, Gauge.of(width, pose instanceof Pose.Alone)).lay();
    }

    /**
     * The figures on their floor, so large as in a picture so wide, on the way from one picture to another: marks from the
     * world's origin to the right, and from the floor down.
     */
    public static List<Mark> passing(Pose pose, double width) {
        Gauge gauge = Gauge.of(width, pose instanceof Pose.Alone);
        Stage stage = new Stage(pose, gauge);
        FloorDrawing floor = new FloorDrawing(stage.eye(), gauge);
        List<Mark> marks = new ArrayList<>(List.of(floor.ground(-width / 2, width / 2)));
        marks.addAll(stage.draw());
        return Rounded.marks(
                marks.stream().map(mark -> mark.moved(0, -floor.level())).toList());
    }

    /** How long a metre is in a picture so wide, in points. */
    public static double metre(Pose pose, double width) {
        return Gauge.of(width, pose instanceof Pose.Alone).scale();
    }

    /** In points; no stroke gets thinner than half of one, so that a narrower picture does not fit whatever is done. */
    private static final double NARROWEST = 15;

    /** One picture being laid. */
    private static final class Laying {

        private final Scene scene;
        private final Pose pose;
        private final double width;
        private final Gauge gauge;

        Laying(Scene scene, Pose pose, double width, Gauge gauge) {
            this.scene = scene;
            this.pose = pose;
            this.width = width;
            this.gauge = gauge;
        }

        Drawing lay() {
            Optional<Inset> inset = inset();
            if (gauge.isTiny() && inset.isPresent()) {
                return only(inset.get());
            }
            Stage stage = new Stage(pose, gauge);
            FloorDrawing floor = new FloorDrawing(stage.eye(), gauge);
            List<Mark> figures = new ArrayList<>(stage.draw());
            figures.addAll(floor.marks(pose, scene.moment().measure()));
            InkedArea cover = InkedArea.of(figures);
            boolean left = inset.map(one -> onTheLeft(one, stage.eye())).orElse(true);
            double free = width - cover.box().width();
            if (free < 0 && width > NARROWEST) {
                return new Laying(
                                scene,
                                pose,
                                width,
                                gauge.smaller(0.99 * width / cover.box().width()))
                        .lay();
            }
            double share = inset.isEmpty() ? 0.5 : left ? 1 : 0;
            double across = across(cover.box().x(), free, share);
            List<Mark> marks = new ArrayList<>();
            marks.add(floor.ground(0, width));
            figures.forEach(mark -> marks.add(mark.moved(across, 0)));
            inset.ifPresent(one -> marks.add(placed(one, left, InkedArea.of(marks))));
            return cut(marks, across, floor.level());
        }

        /** Its top is where the highest ink is. */
        private static Drawing cut(List<Mark> marks, double origin, double floor) {
            Rectangle box = InkedArea.of(marks).box();
            double down = -whole(box.y() - STEP / 2);
            return new Drawing(
                    box.bottom() + down,
                    origin,
                    floor + down,
                    Rounded.marks(
                            marks.stream().map(mark -> mark.moved(0, down)).toList()));
        }

        /** Within what is free, as far to one edge as the share tells. */
        private static double across(double left, double free, double share) {
            double wanted = free * share - left;
            double stepped = share == 0 ? whole(wanted + STEP / 2) : whole(wanted - STEP / 2);
            return stepped < -left || stepped > free - left ? wanted : stepped;
        }

        /** So whoever stands elsewhere is made of the same outlines elsewhere, which a page for screens holds once. */
        private static double whole(double points) {
            return Math.round(points / STEP) * STEP;
        }

        private Drawing only(Inset inset) {
            Mark mark = named(inset)
                    .moved((width - inset.frame().width()) / 2 - inset.frame().x(), 0);
            return cut(List.of(mark), width / 2, inset.frame().bottom());
        }

        private Mark named(Inset inset) {
            return new Mark.Named("lines of the " + inset.side().word(), inset.draw(Stage.meeting(pose), pose.ways()));
        }

        private Mark placed(Inset inset, boolean left, InkedArea below) {
            Rectangle frame = inset.frame();
            double gap = 0.9 * gauge.mark();
            double edge = 0.7 * gauge.line();
            double x = left ? edge : width - edge - frame.width();
            double lowest = below.top(x - gap, x + frame.width() + gap) - gap;
            double bottom = Math.min(lowest, below.box().y() + frame.height());
            return named(inset).moved(x - frame.x(), bottom - frame.bottom());
        }

        private boolean onTheLeft(Inset inset, Eye eye) {
            if (!(pose instanceof Pose.Pair pair)) {
                return true;
            }
            double leader = eye.see(pair.leader().head().centre()).y();
            double follower = eye.see(pair.follower().head().centre()).y();
            return Math.abs(leader - follower) < LEVEL ? inset.side() == Side.LEADER : leader > follower;
        }

        /** If a stroke, or a position of the hand, matters. */
        private Optional<Inset> inset() {
            return attacked().flatMap(side -> scene.at(side).flatMap(aimed -> inset(side, aimed)));
        }

        private Optional<Inset> inset(Side side, Aimed aimed) {
            return Stage.people(pose).stream()
                    .filter(person -> person.side() == side)
                    .filter(PosedBody::feetKnown)
                    .findFirst()
                    .map(person -> new Inset(person, stood(person), scene.weapon(), aimed, gauge));
        }

        private PosedBody stood(PosedBody person) {
            return Stage.meeting(pose)
                    .map(met -> met instanceof Meeting.Evaded evaded ? evaded.stood() : person)
                    .orElse(person);
        }

        private Optional<Side> attacked() {
            Optional<Meeting> meeting = Stage.meeting(pose);
            if (meeting.isEmpty()) {
                return Optional.of(Side.FOLLOWER);
            }
            Optional<Side> attacker = attacker(meeting.get());
            if (attacker.isPresent()) {
                return attacker.map(Side::other);
            }
            return scene.aimed().size() == 1 && pose.feet().isEmpty()
                    ? scene.aimed().keySet().stream().findFirst()
                    : Optional.empty();
        }

        private static Optional<Side> attacker(Meeting meeting) {
            if (meeting instanceof Meeting.Landed landed) {
                return Optional.of(landed.by());
            }
            if (meeting instanceof Meeting.Parried parried) {
                return Optional.of(parried.by());
            }
            if (meeting instanceof Meeting.FallsShort falls) {
                return Optional.of(falls.by());
            }
            if (meeting instanceof Meeting.Evaded evaded) {
                return Optional.of(evaded.by());
            }
            if (meeting instanceof Meeting.Threatens threatens) {
                return Optional.of(threatens.by());
            }
            return meeting instanceof Meeting.NotKnown unknown ? Optional.of(unknown.by()) : Optional.empty();
        }
    }
}
