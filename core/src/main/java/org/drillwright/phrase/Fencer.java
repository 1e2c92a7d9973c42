package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.wording.Message;

/**
 * One of the two, as far as rules look at a person.
 *
 * @param feet how the person stands
 * @param gained whether the rear foot was brought up, so that the next lunge reaches further
 * @param hand the position of the hand
 * @param covers whether the hand closes the line of its position; a blade that was parried, beaten, bound or deceived
 *     closes nothing until its owner moves it or names a guard
 * @param extended whether the arm is extended
 * @param point the line of the partner that the point threatens, empty if none
 * @param reaching whether the hand is looking for the partner's blade
 * @param masked whether the mask is on
 */
public record Fencer(
        Fact<Feet> feet,
        boolean gained,
        Fact<Position> hand,
        Fact<Boolean> covers,
        Fact<Boolean> extended,
        Fact<Optional<Line>> point,
        boolean reaching,
        Fact<Boolean> masked) {

    /** At attention, mask off, blade at rest. */
    public static Fencer atAttention() {
        return new Fencer(
                Fact.of(Feet.STANDING),
                false,
                Fact.unknown(Where.BEGINNING),
                Fact.of(false),
                Fact.of(false),
                Fact.of(Optional.empty()),
                false,
                Fact.of(false));
    }

    public boolean isLunged() {
        return feet.is(Feet.LUNGED);
    }

    Fencer withFeet(Fact<Feet> now) {
        return new Fencer(now, false, hand, covers, extended, point, reaching, masked);
    }

    Fencer withGain() {
        return new Fencer(feet, true, hand, covers, extended, point, reaching, masked);
    }

    Fencer withMask(Fact<Boolean> now) {
        return new Fencer(feet, gained, hand, covers, extended, point, reaching, now);
    }

    /** The hand goes to a position and closes its line; the arm is bent. */
    Fencer guarding(Fact<Position> position) {
        return new Fencer(
                feet, gained, position, Fact.of(true), Fact.of(false), Fact.of(Optional.empty()), false, masked);
    }

    /** The arm goes out and the point threatens a line. */
    Fencer threatening(Fact<Line> line) {
        return new Fencer(feet, gained, hand, Fact.of(false), Fact.of(true), line.map(Optional::of), false, masked);
    }

    /** The blade was met, moved or deceived: it closes nothing and threatens nothing. */
    Fencer idle() {
        return new Fencer(feet, gained, hand, Fact.of(false), extended, Fact.of(Optional.empty()), false, masked);
    }

    /** The hand leaves its line open, nobody knows how. */
    Fencer open(Message since) {
        return new Fencer(
                feet,
                gained,
                Fact.unknown(since),
                Fact.of(false),
                Fact.of(false),
                Fact.of(Optional.empty()),
                false,
                masked);
    }

    Fencer withReach() {
        return new Fencer(feet, gained, hand, covers, extended, point, true, masked);
    }

    Fencer bent() {
        return new Fencer(feet, gained, hand, covers, Fact.of(false), Fact.of(Optional.empty()), reaching, masked);
    }

    /** Where the hand is is known, and not whether the arm is out. */
    Fencer armUnknown(Message since) {
        return new Fencer(feet, gained, hand, covers, Fact.unknown(since), Fact.unknown(since), reaching, masked);
    }

    /** All that the hand does is unknown. */
    Fencer handUnknown(Message since) {
        return new Fencer(
                feet,
                gained,
                Fact.unknown(since),
                Fact.unknown(since),
                Fact.unknown(since),
                Fact.unknown(since),
                false,
                masked);
    }
}
