package org.drillwright.print.pose;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Engagement;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.Range;
import org.drillwright.phrase.State;

/**
 * A scene without what no pose shows, such as the point at which something became unknown, so that scenes that look alike are
 * equal. Poses are made from nothing else.
 */
final class Visible {

    private Visible() {}

    static Scene of(Scene scene) {
        State moment = new State(
                fencer(scene, Side.LEADER),
                fencer(scene, Side.FOLLOWER),
                scene.moment().measure(),
                Fact.of(scene.moment().engagement().value().flatMap(one -> one).map(Visible::of)),
                Fact.of(Optional.empty()),
                Fact.of(Optional.empty()),
                Fact.of(Optional.empty()),
                Optional.empty());
        return new Scene(
                scene.weapon(),
                scene.hands(),
                scene.partner(),
                moment,
                moment,
                round(scene),
                scene.stroke().map(Visible::of),
                scene.feet(),
                scene.displaced(),
                gestures(scene),
                scene.mark());
    }

    /** The arm of who makes a stroke is as the stroke has it, wherever it was before. */
    private static Fencer fencer(Scene scene, Side side) {
        Fencer fencer = scene.moment().of(side);
        boolean strikes = scene.stroke().filter(stroke -> stroke.by() == side).isPresent();
        return new Fencer(
                of(fencer.feet()),
                fencer.gained(),
                strikes ? Fact.unknown(Fact.HERE) : of(fencer.hand()),
                strikes ? Fact.unknown(Fact.HERE) : of(fencer.covers()),
                Fact.of(!strikes && fencer.extended().is(true)),
                Fact.of(Optional.empty()),
                false,
                Fact.of(!fencer.masked().is(false)));
    }

    private static <T> Fact<T> of(Fact<T> fact) {
        return fact.isKnown() ? fact : Fact.unknown(Fact.HERE);
    }

    private static Engagement of(Engagement contact) {
        return new Engagement(contact.leader(), contact.follower(), Optional.empty());
    }

    /** Of aims only that a blade was carried round is part of how the two stand. */
    private static Map<Side, Aimed> round(Scene scene) {
        Map<Side, Aimed> round = new HashMap<>();
        scene.aimed().forEach((side, aimed) -> {
            if (aimed.carriedRound()) {
                round.put(side, new Aimed(true, Optional.empty(), Closing.NONE, true));
            }
        });
        return round;
    }

    /** A beat is shown only where no stroke is. */
    private static Map<Side, Gesture> gestures(Scene scene) {
        Map<Side, Gesture> gestures = new HashMap<>(scene.gestures());
        if (scene.stroke().isPresent()) {
            gestures.values().removeIf(Gesture.BEAT::equals);
        }
        return gestures;
    }

    private static Stroke of(Stroke stroke) {
        Attack attack = stroke.threat().attack();
        Attack seen = new Attack(
                of(attack.line()),
                Optional.empty(),
                Optional.empty(),
                attack.role().stops() ? attack.role() : Action.Role.ATTACK,
                false,
                false,
                false,
                false,
                false,
                attack.reach());
        return new Stroke(
                stroke.by(),
                new Threat(seen, Range.UNKNOWN, end(stroke.threat().end())),
                path(stroke.path()),
                stroke.cut(),
                stroke.at(),
                stroke.held(),
                stroke.bound(),
                stroke.parry());
    }

    /** Whatever lets a stroke arrive, it arrives. */
    private static AttackEnd end(AttackEnd end) {
        return Strokes.arrives(end) ? new AttackEnd.NotMet() : end;
    }

    /** Only ways that go round something are drawn. */
    private static Action.Path path(Action.Path path) {
        return switch (path) {
            case DIRECT, GLIDE, DECEIVE, UNSTATED -> Action.Path.UNSTATED;
            case DISENGAGE, ONE_TWO -> Action.Path.DISENGAGE;
            case COUNTER_DISENGAGE, DOUBLE -> Action.Path.DOUBLE;
            case CUT_OVER -> Action.Path.CUT_OVER;
        };
    }
}
