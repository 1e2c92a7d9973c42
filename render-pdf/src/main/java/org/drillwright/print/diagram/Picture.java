package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.pose.Scene;

/** The picture of one count: the two from above at its end and, over the one who is attacked, that one's lines. */
public final class Picture {

    /** Between lines and plan. */
    private static final double GAP = 3;

    private final Scene scene;
    private final String lines;
    private final String plan;

    Picture(Scene scene, String lines, String plan) {
        this.scene = scene;
        this.lines = lines;
        this.plan = plan;
    }

    /** What is said to who cannot see it. */
    public String alternative() {
        return (lines + " " + plan).strip();
    }

    /** What matters most of it, in words: the strokes and what became of them, or else how the two stand. */
    public String gist() {
        return lines.isEmpty() ? plan : lines;
    }

    /** How high it is at a width, both in points. */
    public double height(double width) {
        return height() * width / Pad.WIDTH;
    }

    private double height() {
        return (scene.aimed().isEmpty() ? 0 : Target.SIZE + GAP) + PlanSketch.HEIGHT;
    }

    /** Drawn with its top left corner at a place, so wide, in points. */
    public Node.Figure draw(double x, double y, double width) {
        Pad pad = new Pad(x, y, width / Pad.WIDTH);
        List<Mark> marks = new ArrayList<>();
        target(Side.LEADER, pad).ifPresent(marks::add);
        target(Side.FOLLOWER, pad.from(Pad.WIDTH - Target.SIZE, 0)).ifPresent(marks::add);
        marks.add(new Mark.Named("plan", PlanSketch.draw(scene, pad.from(0, height() - PlanSketch.HEIGHT))));
        return new Node.Figure(alternative(), pad.box(Pad.WIDTH, height()), marks);
    }

    private Optional<Mark> target(Side side, Pad pad) {
        return scene.at(side)
                .map(aimed ->
                        new Mark.Named("lines of the " + side.word(), TargetSketch.draw(aimed, scene.isSabre(), pad)));
    }
}
