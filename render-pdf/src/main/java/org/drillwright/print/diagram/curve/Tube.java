package org.drillwright.print.diagram.curve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Segment;

/**
 * What discs cover that move along a smooth line while they grow and shrink: a limb on paper. The outline is the
 * discs' envelope, with round ends.
 */
public final class Tube {

    /** A disc that the tube runs through. */
    public record Disc(Dot centre, double radius) {}

    /** Dots on the line for each stretch between two discs. */
    private static final int BETWEEN = 3;

    /** From this angle at a joint on, in degrees, the inner sides of the envelope part, and a disc fills the joint. */
    private static final double BEND = 30;

    /** Dots on the half circle round an end. */
    private static final int ROUND = 4;

    private final List<Disc> discs;
    private final List<Dot> line;
    private final double[] radii;

    /** Of the line, from each of its dots to the one before. */
    private final double[] steps;

    private final List<Dot> oneSide;
    private final List<Dot> otherSide;
    private final List<Segment> closed;

    public Tube(List<Disc> discs) {
        this.discs = List.copyOf(discs);
        this.line = Smooth.sampled(discs.stream().map(Disc::centre).toList(), BETWEEN);
        this.radii = new double[line.size()];
        for (int at = 0; at < radii.length; at++) {
            int disc = Math.min(at / BETWEEN, discs.size() - 1);
            int next = Math.min(disc + 1, discs.size() - 1);
            double share = (at % BETWEEN) / (double) BETWEEN;
            double eased = share * share * (3 - 2 * share);
            radii[at] = (1 - eased) * discs.get(disc).radius()
                    + eased * discs.get(next).radius();
        }
        this.steps = new double[line.size()];
        for (int at = 1; at < steps.length; at++) {
            steps[at] = line.get(at).distance(line.get(at - 1));
        }
        this.oneSide = beside(1);
        this.otherSide = beside(-1);
        this.closed = List.copyOf(round());
    }

    /** All round. */
    public List<Segment> closed() {
        return closed;
    }

    private List<Segment> round() {
        List<Dot> dots = new ArrayList<>(side(1, 0));
        dots.addAll(end(true));
        List<Dot> back = new ArrayList<>(side(-1, 0));
        Collections.reverse(back);
        dots.addAll(back);
        dots.addAll(end(false));
        return Smooth.closed(dots);
    }

    /**
     * From one side round the far end back on the other side, so that it grows out of what it begins in.
     *
     * @param from where it begins on the line, in points from its beginning
     */
    public List<Segment> open(double from) {
        List<Dot> dots = new ArrayList<>(side(1, from));
        dots.addAll(end(true));
        List<Dot> back = new ArrayList<>(side(-1, from));
        Collections.reverse(back);
        dots.addAll(back);
        return Smooth.open(dots);
    }

    /** Of the line in its middle, in points. */
    public double length() {
        return path(0, line.size() - 1);
    }

    /** What it covers, as outlines to be filled together wherever one of them winds round. */
    public List<Segment> area() {
        List<Segment> area = new ArrayList<>(closed);
        for (int at = 1; at < discs.size() - 1; at++) {
            if (bend(at) > BEND) {
                Dot centre = discs.get(at).centre();
                area.addAll(Outline.circle(centre.x(), centre.y(), discs.get(at).radius()));
            }
        }
        return area;
    }

    /** Dots on its outline, for who looks for what it covers. */
    public List<Dot> edge() {
        List<Dot> dots = new ArrayList<>(side(1, 0));
        dots.addAll(side(-1, 0));
        return dots;
    }

    private double bend(int at) {
        Dot in = discs.get(at).centre().minus(discs.get(at - 1).centre()).unit();
        Dot out = discs.get(at + 1).centre().minus(discs.get(at).centre()).unit();
        return Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, in.dot(out)))));
    }

    private List<Dot> side(int side, double from) {
        List<Dot> beside = side > 0 ? oneSide : otherSide;
        List<Dot> dots = new ArrayList<>();
        double gone = 0;
        for (int at = 0; at < line.size(); at++) {
            double step = steps[at];
            gone += step;
            if (gone >= from && dots.isEmpty() && at > 0 && step > 0) {
                dots.add(beside.get(at - 1).towards(beside.get(at), 1 - (gone - from) / step));
            }
            if (gone >= from) {
                dots.add(beside.get(at));
            }
        }
        return dots;
    }

    private List<Dot> beside(int side) {
        List<Dot> dots = new ArrayList<>();
        for (int at = 0; at < line.size(); at++) {
            dots.add(beside(at, side));
        }
        return dots;
    }

    /** c − r r′ t ± r √(1 − r′²) n. */
    private Dot beside(int at, int side) {
        int before = Math.max(0, at - 1);
        int after = Math.min(line.size() - 1, at + 1);
        double step = Math.max(1e-9, path(before, after));
        double growth = Math.max(-0.95, Math.min(0.95, (radii[after] - radii[before]) / step));
        Dot along = line.get(after).minus(line.get(before)).unit();
        Dot out = along.turned().times(side * Math.sqrt(1 - growth * growth));
        return line.get(at).plus(out.minus(along.times(growth)).times(radii[at]));
    }

    private double path(int from, int to) {
        double path = 0;
        for (int at = from + 1; at <= to; at++) {
            path += steps[at];
        }
        return path;
    }

    /** Round one end, from one side to the other, without the dots on the sides. */
    private List<Dot> end(boolean far) {
        int at = far ? line.size() - 1 : 0;
        Dot centre = line.get(at);
        Dot from = (far ? oneSide : otherSide).get(at).minus(centre);
        Dot to = (far ? otherSide : oneSide).get(at).minus(centre);
        double first = Math.atan2(from.y(), from.x());
        double turn = Math.atan2(to.y(), to.x()) - first;
        while (turn < 0) {
            turn += 2 * Math.PI;
        }
        List<Dot> dots = new ArrayList<>();
        for (int step = 1; step < ROUND; step++) {
            double angle = first + turn * step / ROUND;
            dots.add(centre.plus(new Dot(Math.cos(angle), Math.sin(angle)).times(radii[at])));
        }
        return dots;
    }
}
