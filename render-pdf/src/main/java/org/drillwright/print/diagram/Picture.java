package org.drillwright.print.diagram;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.print.diagram.stage.Drawing;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Node;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Scene;

/** The picture of one count: the two as they stand, what the last stroke came to, and the lines of the one attacked. */
public final class Picture {

    private final Scene scene;
    private final Pose pose;
    private final String alternative;
    private final String gist;
    private final boolean changes;

    /** By width, in points: whoever lays a card asks for the height of a picture many times. */
    private final Map<Double, Drawing> drawn = new ConcurrentHashMap<>();

    Picture(Scene scene, Pose pose, String alternative, String gist, boolean changes) {
        this.scene = scene;
        this.pose = pose;
        this.alternative = alternative;
        this.gist = gist;
        this.changes = changes;
    }

    /** What is said to who cannot see it: strokes, feet and hands, then how they stand. */
    public String alternative() {
        return alternative;
    }

    /** What is new in it, in words: the strokes and what became of them, or else what feet and hands did, or how they stand. */
    public String gist() {
        return gist;
    }

    /** Whether it shows anything that the picture before it, or the start, does not show. */
    public boolean changes() {
        return changes;
    }

    /** Whether nobody stands opposite; one alone takes 20/28 of the width of two to be as large. */
    public boolean isAlone() {
        return pose instanceof Pose.Alone;
    }

    /** How high it is at a width, both in points. */
    public double height(double width) {
        return drawing(width).height();
    }

    /** Drawn with its top left corner at a place, so wide, in points. */
    public Node.Figure draw(double x, double y, double width) {
        Drawing drawing = drawing(width);
        return new Node.Figure(alternative, new Box(x, y, width, drawing.height()), drawing.marks());
    }

    private Drawing drawing(double width) {
        return drawn.computeIfAbsent(width, wide -> Drawing.of(scene, pose, wide));
    }
}
