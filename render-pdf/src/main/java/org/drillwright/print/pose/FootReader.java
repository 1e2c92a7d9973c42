package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.Played;
import org.drillwright.print.pose.FootMove.Kind;

/** Finds in moves as they were played what the feet did. */
final class FootReader {

    private final List<Footing> feet = new ArrayList<>();

    private FootReader() {}

    static List<Footing> read(List<Played> moves) {
        FootReader reader = new FootReader();
        for (Played played : moves) {
            Fencer before = played.before().of(played.move().by());
            played.move().parts().forEach(part -> reader.add(played.move().by(), part.action(), before));
        }
        return reader.feet;
    }

    private void add(Side by, Action action, Fencer before) {
        if (action instanceof Action.Step step) {
            step(by, step);
        } else if (action instanceof Action.Lunge lunge && !before.isLunged()) {
            lunge(by, lunge, before.gained());
        } else if (action instanceof Action.Recover recover && before.isLunged()) {
            boolean forward = recover.way() == Action.Way.FORWARD;
            add(by, forward ? Kind.REAR_FOOT : Kind.FRONT_FOOT, forward ? Distance.LUNGE : -Distance.LUNGE);
        } else if (action instanceof Action.OnGuard && before.isLunged()) {
            add(by, Kind.FRONT_FOOT, -Distance.LUNGE);
        } else if (action instanceof Action.Withdraw) {
            add(by, Kind.BOTH_FEET, -Distance.STEP);
        } else if (action.isReply(Action.Reply.FOLLOW)) {
            follow(by);
        } else if (before.feet().is(Feet.LUNGED) && action instanceof Action.Stand) {
            add(by, Kind.FRONT_FOOT, -Distance.LUNGE);
        }
    }

    private void step(Side by, Action.Step step) {
        double forward = step.foot().halfSteps() * step.times() * Distance.STEP / 2;
        switch (step.foot()) {
            case ADVANCE, RETREAT -> add(by, Kind.BOTH_FEET, forward);
            case CROSS_FORWARD, CROSS_BACK -> add(by, Kind.CROSSING, forward);
            case JUMP_FORWARD, JUMP_BACK -> add(by, Kind.JUMP, forward);
            case HALF_ADVANCE -> add(by, Kind.FRONT_FOOT, forward);
            case HALF_RETREAT -> add(by, Kind.REAR_FOOT, forward);
            case GAIN -> add(by, Kind.REAR_FOOT, Distance.STEP);
            case APPEL -> add(by, Kind.STAMP, 0);
        }
    }

    private void lunge(Side by, Action.Lunge lunge, boolean gained) {
        double full = Distance.LUNGE + (gained ? Distance.STEP : 0);
        switch (lunge.depth()) {
            case FULL, UNLESS_LUNGED -> add(by, Kind.FRONT_FOOT, full);
            case HALF -> add(by, Kind.FRONT_FOOT, full / 2);
            case FLECHE -> add(by, Kind.PASSING, Distance.FLECHE);
        }
    }

    /** As far as the partner went, the other way. */
    private void follow(Side by) {
        double gone = feet.stream()
                .filter(footing -> footing.by() != by)
                .mapToDouble(Footing::forward)
                .sum();
        if (gone != 0) {
            add(by, Kind.BOTH_FEET, -gone);
        }
    }

    /** Several of a kind, one behind the other, are one. */
    private void add(Side by, Kind kind, double forward) {
        for (int at = feet.size() - 1; at >= 0; at--) {
            Footing last = feet.get(at);
            if (last.by() == by) {
                if (last.kind() == kind) {
                    feet.set(at, new Footing(by, kind, last.forward() + forward));
                    return;
                }
                break;
            }
        }
        feet.add(new Footing(by, kind, forward));
    }
}
