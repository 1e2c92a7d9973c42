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
import org.drillwright.print.pose.Meeting;
import org.drillwright.print.pose.Pose;
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
    public static Drawing of(Sight sight, double width) {
        return new Laying(sight, width, Gauge.of(width, sight.pose() instanceof Pose.Alone)).lay();
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

        private final Sight sight;
        private final Pose pose;
        private final double width;
        private final Gauge gauge;

        Laying(Sight sight, double width, Gauge gauge) {
            this.sight = sight;
            this.pose = sight.pose();
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
            figures.addAll(floor.marks(pose, sight.measure()));
            InkedArea cover = InkedArea.of(figures);
            boolean left = inset.map(one -> onTheLeft(one, stage.eye())).orElse(true);
            Rectangle box = cover.box();
            double free = width - box.width();
            if (free < 0 && width > NARROWEST) {
                return new Laying(sight, width, gauge.smaller(0.99 * width / box.width())).lay();
            }
            double share = inset.isEmpty() ? 0.5 : left ? 1 : 0;
            double across = across(box.x(), free, share);
            List<Mark> marks = new ArrayList<>();
            marks.add(floor.ground(0, width));
            figures.forEach(mark -> marks.add(mark.moved(across, 0)));
            InkedArea below = InkedArea.of(marks);
            List<Mark> above =
                    inset.map(one -> placed(one, left, below)).stream().toList();
            marks.addAll(above);
            return cut(marks, below.and(above).box(), across, floor.level());
        }

        /** Its top is where the highest ink is. */
        private static Drawing cut(List<Mark> marks, Rectangle box, double origin, double floor) {
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
            return cut(
                    List.of(mark),
                    InkedArea.of(List.of(mark)).box(),
                    width / 2,
                    inset.frame().bottom());
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

        private Optional<Inset> inset() {
            return sight.attacked().flatMap(this::inset);
        }

        private Optional<Inset> inset(Attacked attacked) {
            return Stage.people(pose).stream()
                    .filter(person -> person.side() == attacked.side())
                    .filter(PosedBody::feetKnown)
                    .findFirst()
                    .map(person -> new Inset(person, stood(person), pose.weapon(), attacked, gauge));
        }

        private PosedBody stood(PosedBody person) {
            return Stage.meeting(pose)
                    .map(met -> met instanceof Meeting.Evaded evaded ? evaded.stood() : person)
                    .orElse(person);
        }
    }
}
