package org.drillwright.print.pose;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;

/** How blades and bodies meet in the moment that is shown: the end of the last stroke, or else the contact of the blades. */
public sealed interface Meeting {

    /**
     * The stroke arrives.
     *
     * @param by whose stroke it is
     * @param held where the other's blade is held out by it, if it is (a bind, opposition)
     */
    record Landed(Side by, Place target, Optional<Crossing> held) implements Meeting {}

    /**
     * It is carried aside: the other's forte crosses it.
     *
     * @param by whose stroke it is
     * @param target where it went to
     */
    record Parried(Side by, Place target, Crossing crossing) implements Meeting {}

    /**
     * It does not reach.
     *
     * @param tip where the blade ends
     */
    record FallsShort(Side by, Point tip, Place target) implements Meeting {}

    /**
     * The body was taken out of its way.
     *
     * @param stood the one who evades, as that one stood before
     */
    record Evaded(Side by, Point tip, Place target, PosedBody stood) implements Meeting {}

    /** It is shown and does not arrive, or not yet. */
    record Threatens(Side by, Point tip, Place target) implements Meeting {}

    /** There is a stroke, and its line or what became of it is not known. */
    record NotKnown(Side by) implements Meeting {}

    /** Without a stroke: the blades touch. */
    record Engaged(Crossing crossing) implements Meeting {}

    /**
     * Without a stroke: a blade was beaten aside.
     *
     * @param by who beat
     * @param before where the other's blade was
     */
    record Beaten(Side by, Crossing contact, Blade before) implements Meeting {}

    /** Without a stroke: the blades are apart, or it is not known whether they touch. */
    record Apart() implements Meeting {}
}
