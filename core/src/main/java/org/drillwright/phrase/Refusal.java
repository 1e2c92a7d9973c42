package org.drillwright.phrase;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
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
    record OutOfReach(Range measure, boolean lunges, boolean lunged) implements Refusal {}

    /** A lunge where an extension would do. */
    record LungeTooClose() implements Refusal {}

    /** An attack that nothing meets. */
    record Unanswered(Fact<Line> line) implements Refusal {}

    /** An attack is under way and the other holds: it will be taken, and is better said so. */
    record HoldUnderAttack() implements Refusal {}

    /**
     * A retreat that does not get out of reach.
     *
     * @param more the steps back that it lacks, 1 or more
     */
    record RetreatTooShort(Range measure, int more) implements Refusal {}

    /** A riposte without a parry of one's own, or a counter-riposte without the parry of a riposte. */
    record NoParryBefore(boolean counter) implements Refusal {}

    /** Nothing to pass: the blades are apart and the partner's blade does not stand before the point. */
    record NoBladeToPass(Action.Path path, Line from) implements Refusal {}

    /** It ends in another line than its name says. */
    record EndsElsewhere(Action.Path path, Line from, Line expected, Line named) implements Refusal {}

    /** There is no change of engagement to deceive. */
    record NothingToCounter() implements Refusal {}

    /** A straight riposte that would have to pass the blade. */
    record NotStraight(Position parry, Line expected, Line named) implements Refusal {}

    /** Somebody on the lunge does what needs a recovery first. */
    record NotRecovered(String what) implements Refusal {}

    /** Two lunges meet. */
    record BothLunge() implements Refusal {}

    /**
     * A point or an edge goes to a person without a mask.
     *
     * @param edge whether the words say that it is an edge
     */
    record Unmasked(Side who, boolean edge) implements Refusal {}

    /** A mask comes off within reach. */
    record MaskOffInReach(Range measure) implements Refusal {}

    /** A place that is no target with this weapon. */
    record OffTarget(Target target) implements Refusal {}

    /** At sabre the rear foot may not pass the front one. */
    record RearFootPasses() implements Refusal {}
}
