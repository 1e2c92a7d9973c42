package org.drillwright.phrase;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Target;

/** Why an action cannot be what it claims, as data; the rules put it into words. */
public sealed interface Refusal {

    /**
     * An attack goes where the blade stands.
     *
     * @param guard the position that closes it, if a guard does
     */
    record ClosedLine(Line line, Optional<Position> guard, List<Line> open) implements Refusal {}

    /**
     * A parry ends elsewhere.
     *
     * @param firm whether the table's row is firm
     */
    record ParryMisses(Position position, Action.ParryKind kind, Line attacked, Fact<Position> from, boolean firm)
            implements Refusal {}

    /** A parry at the other height than the attack, whose line is not known further. */
    record ParryAtOtherHeight(Position position, Height attacked) implements Refusal {}

    /** A circular parry is named for a position that the hand does not stand in. */
    record CircleElsewhere(Position position, Position from, Line attacked) implements Refusal {}

    /** A circular parry meets an attack that arrives in the very line that the hand closes. */
    record CircleNotNeeded(Position position, Line attacked) implements Refusal {}

    /** The hand stands there already and the attack comes by the other line: only the circular parry meets it. */
    record CircleWanted(Position position, Line attacked) implements Refusal {}

    /** The parry travels otherwise than it is called. */
    record KindDiffers(Position from, Position to, Action.ParryKind called, Action.ParryKind is) implements Refusal {}

    /** There is nothing to parry. */
    record NothingToParry() implements Refusal {}

    /**
     * A touch that cannot arrive.
     *
     * @param lunged whether the one who attacks is already on the lunge
     */
    record OutOfReach(Range measure, boolean lunges, boolean lunged) implements Refusal {

        /** A touch that the arm alone does not reach. */
        static OutOfReach ofTheArm(Range measure) {
            return new OutOfReach(measure, false, false);
        }
    }

    /** A lunge where an extension would do. */
    record LungeTooClose() implements Refusal {}

    /** An attack that nothing meets. */
    record Unanswered(Fact<Line> line) implements Refusal {}

    /** What arrives and is owned to neither on its count nor on the next. */
    enum Arrival {
        /** An attack behind the parry that it has deceived. */
        PAST_THE_PARRY,
        /** A stop hit at one who comes on. */
        STOP_HIT,
        /** A point that has stood in line, at one who steps on to it. */
        POINT_IN_LINE
    }

    /** A hit that nobody owns to. */
    record NotOwnedTo(Arrival arrival) implements Refusal {}

    /** An attack is under way and the other holds: it will be taken, and is better said so. */
    record HoldUnderAttack() implements Refusal {}

    /** A riposte goes round the hand that waits for it, and the touch is not owned to. */
    record HandDeceived() implements Refusal {}

    /** A touch is taken, and none comes. */
    record NothingToTake() implements Refusal {}

    /**
     * A retreat that does not get out of reach.
     *
     * @param more the steps back that it lacks, 1 or more
     */
    record RetreatTooShort(Range measure, int more) implements Refusal {}

    /** A riposte without a parry of one's own, or a counter-riposte without the parry of a riposte. */
    record NoParryBefore(boolean counter) implements Refusal {}

    /** A remise, redoublement or reprise by who has not attacked. */
    record NothingToRenew(Action.Role role) implements Refusal {}

    /** The partner's blade is to be taken or pressed, or gone along, and the blades are apart. */
    record NoBladeToTake(Optional<Action.Contact> contact) implements Refusal {}

    /** A beat where the partner's blade is not. */
    record BeatsElsewhere(Position at, Line blade) implements Refusal {}

    /**
     * A beat or a press against the side of the blade on which this one does not lie.
     *
     * @param blade the line in which the blades touch, of who beats or presses
     */
    record FromTheOtherSide(Action.Contact contact, Position at, Line blade) implements Refusal {}

    /** There is no engagement to change. */
    record NoEngagementToChange() implements Refusal {}

    /** An engagement is changed to the one that is there. */
    record ChangesToItself(Position position) implements Refusal {}

    /** A parry that cedes to nothing: no blade takes the parrier's. */
    record NothingToCedeTo() implements Refusal {}

    /** Nothing to pass: the blades are apart and the partner's blade does not stand before the point. */
    record NoBladeToPass(Action.Path path, Line from) implements Refusal {}

    /** It ends in another line than its name says. */
    record EndsElsewhere(Action.Path path, Line from, Line expected, Line named) implements Refusal {}

    /** There is no change of engagement to deceive. */
    record NothingToCounter() implements Refusal {}

    /** A straight riposte that would have to pass the blade. */
    record NotStraight(Position parry, Line expected, Line named) implements Refusal {}

    /**
     * A stroke that would have to go through the blades that touch.
     *
     * @param contact the line of the one attacked in which they touch
     * @param beaten whether they touched there in a beat just before
     * @param sure whether the words say that it goes straight, or in opposition, and the blades certainly still touch
     */
    record AcrossTheBlades(Line contact, Line named, boolean beaten, boolean sure, boolean opposition)
            implements Refusal {}

    /** What needs a recovery first. */
    enum Onward {
        GOES_FORWARD,
        GOES_BACK,
        LUNGES_AGAIN
    }

    /** Somebody on the lunge does what needs a recovery first. */
    record NotRecovered(Onward what) implements Refusal {}

    /** The arm goes out from a lunge that was made without it. */
    record FootBeforeHand() implements Refusal {}

    /** A recovery by who is not on the lunge. */
    record NothingToRecover() implements Refusal {}

    /** One lunges and the other comes forward on to the point. */
    record RunsOn(Range measure) implements Refusal {}

    /** A step or a lunge that ends where the partner's body is. */
    record NoRoom() implements Refusal {}

    /** The words of the two put the blades otherwise. */
    record WordsDisagree(Stance theirs, Stance own) implements Refusal {}

    /** Two lunges meet. */
    record BothLunge() implements Refusal {}

    /**
     * A point or an edge goes to a person without a mask.
     *
     * @param edge whether the words say that it is an edge
     */
    record Unmasked(Side who, boolean edge) implements Refusal {}

    /**
     * A mask comes off within reach.
     *
     * @param inPlay whether the arm alone reaches, or an arm is out, somebody stands in a lunge, or an attack is on its way
     */
    record MaskOffInReach(Range measure, boolean inPlay) implements Refusal {}

    /** A place that is no target with this weapon. */
    record OffTarget(Target target) implements Refusal {}

    /** At sabre the rear foot may not pass the front one. */
    record RearFootPasses() implements Refusal {}
}
