package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.phrase.Range;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.pose.Scene;

/**
 * Draws the two from above and, under them, the measure: a bar from foot to foot with a dot for each foot action that
 * it takes to touch.
 */
final class PlanSketch {

    static final double HEIGHT = 36;

    static final String MEASURE = "measure";
    static final String STEP = "foot action";

    /** Where the ground's axis runs, from the top. */
    private static final double AXIS = 14;

    private static final double SCALE = 18.5;

    private static final double ALONE = 1.2;

    private PlanSketch() {}

    static List<Mark> draw(Scene scene, Pad pad) {
        if (!scene.partner()) {
            return alone(scene, pad);
        }
        Pad ground = pad.from(0, AXIS);
        Ground at = Ground.of(scene.end());
        List<Mark> marks = new ArrayList<>();
        marks.addAll(PersonSketch.leader(scene.end().leader(), at.leaderToe(), ground));
        marks.addAll(PersonSketch.follower(scene.end().follower(), at.followerToe(), ground));
        marks.addAll(scale(scene.end().measure(), at, ground));
        return marks;
    }

    /** Nobody opposite: the one person, larger. */
    private static List<Mark> alone(Scene scene, Pad pad) {
        Pad larger = new Pad(pad.x(Pad.WIDTH / 2), pad.y(HEIGHT / 2), ALONE * pad.unit());
        return PersonSketch.follower(scene.end().follower(), -Ground.STANCE / 2, larger);
    }

    private static List<Mark> scale(Range measure, Ground at, Pad pad) {
        double from = at.leaderToe();
        double to = at.followerToe();
        List<Mark> bar = new ArrayList<>();
        bar.add(pad.line(from, SCALE - 3, from, SCALE + 3, 1.6));
        bar.add(pad.line(to, SCALE - 3, to, SCALE + 3, 1.6));
        boolean exact = measure.isExact() || measure.most() < 0;
        boolean out = measure.least() >= Ground.FAR;
        if (exact && !out) {
            bar.add(pad.line(from, SCALE, to, SCALE, 1.6));
        } else {
            bar.addAll(pad.dashes(from, SCALE, to, SCALE, 1.6, 2.6));
        }
        List<Mark> marks = new ArrayList<>(List.of(new Mark.Named(MEASURE, bar)));
        if (!measure.isKnown()) {
            double middle = (from + to) / 2;
            marks.add(new Mark.Named(
                    TargetSketch.UNKNOWN,
                    List.of(pad.disc(middle, SCALE - 2, 6, Ink.WHITE), pad.question(middle, SCALE - 2, 9))));
        } else {
            marks.addAll(steps(Math.min(Ground.FAR, measure.least()), from, to, pad));
        }
        return marks;
    }

    private static List<Mark> steps(int steps, double from, double to, Pad pad) {
        List<Mark> marks = new ArrayList<>();
        double first = (from + to) / 2 - (steps - 1) * Ground.STEP / 2;
        for (int step = 0; step < steps; step++) {
            double x = first + step * Ground.STEP;
            marks.add(new Mark.Named(
                    STEP, List.of(pad.disc(x, SCALE, 4.4, Ink.WHITE), pad.disc(x, SCALE, 3.2, Ink.BLACK))));
        }
        return marks;
    }
}
