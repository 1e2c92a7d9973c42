package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.RearHand;
import org.drillwright.terms.Terms;

/** All ways in which two can stand opposite each other at the end of a stroke. */
final class Pairings {

    static final Camera CAMERA = Camera.oblique();

    static final List<Line> LINES = List.of(Line.HIGH_INSIDE, Line.HIGH_OUTSIDE, Line.LOW_INSIDE, Line.LOW_OUTSIDE);

    /** Who strikes, who is struck at, and where. */
    record Pairing(Stand attacker, Stand target, Line line) {

        Place place() {
            return new TargetPoints(target.body(), CAMERA).of(line);
        }

        @Override
        public String toString() {
            return "%s %s, %s%s, %s at %s"
                    .formatted(
                            attacker.side().word(),
                            attacker.posture().equals(Posture.LUNGE) ? "lunges" : "stretches the arm",
                            attacker.leftHanded() ? "left" : "right",
                            target.leftHanded() ? " against left" : " against right",
                            Terms.of(line).english(),
                            target.posture().equals(Posture.LUNGE) ? "one in the lunge" : "one on guard");
        }
    }

    private Pairings() {}

    /** Both roles, four pairs of hands, four lines, with the arm alone and with a lunge, at one on guard. */
    static Stream<Pairing> all() {
        List<Pairing> all = new ArrayList<>();
        for (Posture posture : List.of(Posture.ON_GUARD, Posture.LUNGE)) {
            all.addAll(of(posture, Posture.ON_GUARD));
        }
        return all.stream();
    }

    /** The answer with the arm alone at one who has lunged. */
    static Stream<Pairing> atOneInTheLunge() {
        return of(Posture.ON_GUARD, Posture.LUNGE).stream();
    }

    private static List<Pairing> of(Posture attacker, Posture target) {
        List<Pairing> all = new ArrayList<>();
        for (Side side : Side.values()) {
            for (int hands = 0; hands < 4; hands++) {
                for (Line line : LINES) {
                    all.add(new Pairing(
                            stand(side, (hands & 1) > 0, Distance.EXTENSION, attacker),
                            stand(side.other(), (hands & 2) > 0, Distance.EXTENSION, target),
                            line));
                }
            }
        }
        return all;
    }

    /** One of two who are so far from each other. */
    static Stand stand(Side side, boolean leftHanded, double measure, Posture posture) {
        double toe = side == Side.LEADER ? -measure / 2 : measure / 2;
        RearHand rear = posture.equals(Posture.LUNGE) ? RearHand.BACK : RearHand.UP;
        return new Stand(side, leftHanded, toe, posture, rear, true, true);
    }
}
