package org.drillwright.print.pose;

import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.model.Hands;
import org.drillwright.model.Side;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Fencer;
import org.drillwright.print.pose.body.Axes;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Head;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.RearHand;

/** How those of a scene stand, and how they hold the weapon where no stroke asks for it. */
final class Stands {

    private final Scene scene;

    Stands(Scene scene) {
        this.scene = scene;
    }

    /** From the bell on, in metres; 0 without a weapon. */
    double length() {
        return Arms.blade(scene.weapon());
    }

    /**
     * Of two with opposite hands a drill does not say which is which; with a left-handed leader both show the chest.
     */
    private boolean leftHanded(Side side) {
        return scene.hands() == Hands.OPPOSITE && side == Side.LEADER;
    }

    Stand of(Side side, double toe) {
        Fencer fencer = scene.moment().of(side);
        Posture posture = fencer.feet()
                .value()
                .map(feet -> posture(side, feet, fencer.gained()))
                .orElse(Posture.STANDING);
        boolean masked = !fencer.masked().is(false);
        return new Stand(
                side,
                leftHanded(side),
                toe,
                posture,
                rear(posture, masked),
                masked,
                fencer.feet().isKnown());
    }

    private Posture posture(Side side, Feet feet, boolean gained) {
        return switch (feet) {
            case STANDING -> Posture.STANDING;
            case ON_GUARD -> passes(side) ? Posture.FLECHE : gained ? Posture.GATHERED : Posture.ON_GUARD;
            case LUNGED -> lungedHalf(side) ? Posture.HALF_LUNGE : Posture.LUNGE;
        };
    }

    private Stream<Footing> feet(Side side) {
        return scene.feet().stream().filter(footing -> footing.by() == side);
    }

    /** Whether a flèche is the last that the feet did. */
    private boolean passes(Side side) {
        return feet(side)
                .reduce((first, next) -> next)
                .filter(footing -> footing.kind() == FootMove.Kind.PASSING)
                .isPresent();
    }

    private boolean lungedHalf(Side side) {
        return feet(side)
                .anyMatch(footing -> footing.kind() == FootMove.Kind.FRONT_FOOT
                        && footing.forward() > 0
                        && footing.forward() < Distance.LUNGE);
    }

    /** Whether somebody went back, and so needs no more to be out of reach. */
    boolean goesBack(Side side) {
        return feet(side).anyMatch(footing -> footing.forward() < 0);
    }

    private RearHand rear(Posture posture, boolean masked) {
        if (!masked && length() > 0) {
            return RearHand.WITH_MASK;
        }
        if (posture.equals(Posture.STANDING)) {
            return RearHand.DOWN;
        }
        return scene.isSabre() ? RearHand.HIP : isGuard(posture) ? RearHand.UP : RearHand.BACK;
    }

    private static boolean isGuard(Posture posture) {
        return posture.equals(Posture.ON_GUARD) || posture.equals(Posture.GATHERED);
    }

    /** Who does no stroke and is met by none. */
    PosedBody idle(Stand stand) {
        Optional<Hold> hold = hold(stand);
        if (hold.isEmpty()) {
            return stand.with(Optional.empty(), Optional.empty());
        }
        return stand.known() ? stand.holding(hold.get(), length()) : stand.holding(Holds.HANGING, 0);
    }

    /** How the hand and the blade are; empty if it is not known. */
    Optional<Hold> hold(Stand stand) {
        Side side = stand.side();
        Fencer fencer = scene.moment().of(side);
        if (!stand.known()) {
            return Optional.of(Holds.HANGING);
        }
        Optional<Hold> gesture = scene.gesture(side).flatMap(one -> gesture(one, stand));
        if (gesture.isPresent() && scene.stroke().isEmpty()) {
            return gesture;
        }
        if (stand.posture().equals(Posture.STANDING)) {
            return Optional.of(length() == 0 ? Holds.HANGING : Holds.AT_REST);
        }
        Optional<Hold> offered = gesture.filter(one -> fencer.covers().is(false));
        Optional<Position> hand = fencer.hand().value();
        if (fencer.extended().is(true)) {
            return Optional.of(stretched(hand));
        }
        return offered.or(() -> hand.map(position -> Holds.guard(scene.weapon(), position)))
                .or(() -> length() == 0 ? Optional.of(Holds.guard(scene.weapon(), Position.SIXTE)) : Optional.empty());
    }

    private static Hold stretched(Optional<Position> hand) {
        return Hold.of(0.57, 0.04, hand.filter(Stands::isLow).isPresent() ? -0.10 : -0.02, 0, 0);
    }

    private static boolean isLow(Position position) {
        return position == Position.OCTAVE || position == Position.SEPTIME || position == Position.SECONDE;
    }

    private Optional<Hold> gesture(Gesture gesture, Stand stand) {
        return switch (gesture) {
            case SALUTE -> Optional.of(length() == 0 ? Holds.HANGING : salute(stand));
            case GIVES_HIGH -> Optional.of(Holds.GIVES_HIGH);
            case GIVES_LOW -> Optional.of(Holds.GIVES_LOW);
            case BEAT -> Optional.empty();
        };
    }

    /** The bell before the chin, the blade upright. */
    private static Hold salute(Stand stand) {
        Body body = stand.body();
        Axes axes = body.axes();
        Head head = body.head(true);
        Point wrist = head.centre().plus(axes.way(0.20, 0.03, -0.26)).minus(body.swordShoulder());
        return Hold.of(wrist.dot(axes.ahead()), wrist.dot(axes.outside()), wrist.z(), 84, 0);
    }
}
