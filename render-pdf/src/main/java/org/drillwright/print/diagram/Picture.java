package org.drillwright.print.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.print.diagram.curve.InkedArea;
import org.drillwright.print.diagram.stage.Drawing;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.pose.Passage;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.Scene;

/** The picture of one count: the two as they stand, what the last stroke came to, and the lines of the one attacked. */
public final class Picture {

    private final Scene scene;
    private final Pose pose;
    private final String alternative;
    private final String gist;
    private final boolean changes;
    private final List<Picture> strokes;

    /** By width, in points: whoever lays a card asks for the height of a picture many times. */
    private final Map<Double, Drawing> drawn = new ConcurrentHashMap<>();

    Picture(Scene scene, Pose pose, String alternative, String gist, boolean changes, List<Picture> strokes) {
        this.scene = scene;
        this.pose = pose;
        this.alternative = alternative;
        this.gist = gist;
        this.changes = changes;
        this.strokes = List.copyOf(strokes);
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

    /** Of a count that holds several strokes, a picture of each; this one shows the last. Else empty. */
    public List<Picture> strokes() {
        return strokes;
    }

    /** What a screen shows of it one after the other: each stroke, or itself. The last says all that is said of it. */
    public List<Picture> shots() {
        if (strokes.isEmpty()) {
            return List.of(this);
        }
        List<Picture> shots = new ArrayList<>(strokes);
        Picture last = shots.remove(shots.size() - 1);
        shots.add(new Picture(last.scene, last.pose, alternative, gist, changes, List.of()));
        return shots;
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
        return new Node.Figure(alternative, new Rectangle(x, y, width, drawing.height()), drawing.marks());
    }

    /** How far below its top the floor is on which they stand, at a width, both in points. */
    public double floor(double width) {
        return drawing(width).floor();
    }

    /** How far from its left edge the middle between the two is when they stand still, at a width, both in points. */
    public double middle(double width) {
        return drawing(width).origin();
    }

    /** How far to the right of this picture's middle the next one's lies on the same floor, at a width, both in points. */
    public double shift(Picture next, double width) {
        return new Passage(pose, next.pose).shift() * Drawing.metre(pose, width);
    }

    /** Whether there is anything to be drawn between this picture and the next. */
    public boolean leadsTo(Picture next) {
        return new Passage(pose, next.pose).at(0.5).isPresent();
    }

    /**
     * The figures on the way from this picture to the next, without signs; none where something is not known of how they
     * stand.
     *
     * @param share of the way, 0 to 1
     * @param middle where the middle between the two is to lie, in points
     * @param floor where they are to stand, in points
     * @param width of the pictures between which they are, in points
     */
    public Optional<Node.Figure> towards(Picture next, double share, double middle, double floor, double width) {
        return new Passage(pose, next.pose)
                .at(share)
                .map(between -> Drawing.passing(between, width))
                .map(marks -> figure(next.alternative, marks, middle, floor));
    }

    private static Node.Figure figure(String alternative, List<Mark> marks, double x, double y) {
        Rectangle cover = InkedArea.of(marks).box();
        return new Node.Figure(
                alternative,
                cover.moved(x, y),
                marks.stream().map(mark -> mark.moved(-cover.x(), -cover.y())).toList());
    }

    private Drawing drawing(double width) {
        return drawn.computeIfAbsent(width, wide -> Drawings.of(scene, pose, wide));
    }
}
