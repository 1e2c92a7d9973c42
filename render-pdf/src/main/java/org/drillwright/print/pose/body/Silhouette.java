package org.drillwright.print.pose.body;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.pose.body.Trunk.Slice;

/** What a body covers on paper: discs and what lies between them. */
public final class Silhouette {

    private record Disc(PaperPoint middle, double radius) {}

    private record Bone(Disc from, Disc to) {

        /** From a place to the edge; below 0 inside. */
        double distance(PaperPoint spot) {
            double x = to.middle.x() - from.middle.x();
            double y = to.middle.y() - from.middle.y();
            double square = x * x + y * y;
            double along = (spot.x() - from.middle.x()) * x + (spot.y() - from.middle.y()) * y;
            double share = square == 0 ? 0 : Math.max(0, Math.min(1, along / square));
            double away = Math.hypot(spot.x() - from.middle.x() - share * x, spot.y() - from.middle.y() - share * y);
            return away - from.radius - share * (to.radius - from.radius);
        }
    }

    private final Camera camera;
    private final List<Bone> bones = new ArrayList<>();

    private Silhouette(Camera camera) {
        this.camera = camera;
    }

    /** A whole person without the blade. */
    public static Silhouette of(PosedBody person, Camera camera) {
        Silhouette silhouette = withoutSword(person, camera);
        person.swordArm()
                .ifPresent(arm -> silhouette.chain(arm.balls(person.trunk().shoulders())));
        person.blade()
                .ifPresent(blade -> silhouette.chain(List.of(
                        new Ball(person.swordArm().map(Arm::wrist).orElse(blade.bell()), 0.05),
                        new Ball(blade.bell(), 0.06))));
        return silhouette;
    }

    /** A person without the arm that holds the sword. */
    public static Silhouette withoutSword(PosedBody person, Camera camera) {
        Silhouette silhouette = new Silhouette(camera);
        silhouette.trunk(person.trunk());
        silhouette.head(person.head());
        for (Leg leg : List.of(person.front(), person.rear())) {
            silhouette.chain(leg.balls());
            silhouette.chain(List.of(new Ball(leg.heel(), 0.04), new Ball(leg.toe(), 0.026)));
        }
        silhouette.chain(person.rearArm().balls(person.trunk().shoulders()));
        return silhouette;
    }

    private void head(Head head) {
        Point half = head.up().times(Head.HALF_HEIGHT - Head.HALF_DEPTH);
        chain(List.of(
                new Ball(head.centre().minus(half), Head.HALF_DEPTH),
                new Ball(head.centre().plus(half), Head.HALF_DEPTH)));
    }

    private void trunk(Trunk trunk) {
        PaperPoint below = camera.see(trunk.pelvis());
        PaperPoint above = camera.see(trunk.shoulders());
        double length = below.distance(above);
        double x = (below.y() - above.y()) / length;
        double y = (above.x() - below.x()) / length;
        List<Disc> discs = new ArrayList<>();
        for (Slice slice : trunk.slices()) {
            discs.add(new Disc(
                    camera.see(slice.middle()), Math.hypot(across(slice.width(), x, y), across(slice.depth(), x, y))));
        }
        join(discs);
    }

    private double across(Point way, double x, double y) {
        PaperPoint seen = camera.see(way);
        return seen.x() * x + seen.y() * y;
    }

    private void chain(List<Ball> balls) {
        join(balls.stream()
                .map(ball -> new Disc(camera.see(ball.centre()), ball.radius()))
                .toList());
    }

    private void join(List<Disc> discs) {
        for (int at = 1; at < discs.size(); at++) {
            bones.add(new Bone(discs.get(at - 1), discs.get(at)));
        }
    }

    /** From a place on paper to the nearest edge, in metres; below 0 inside. */
    public double distance(PaperPoint spot) {
        double least = Double.MAX_VALUE;
        for (Bone bone : bones) {
            least = Math.min(least, bone.distance(spot));
        }
        return least;
    }

    /** From a place in space, as it is seen. */
    public double distance(Point point) {
        return distance(camera.see(point));
    }
}
