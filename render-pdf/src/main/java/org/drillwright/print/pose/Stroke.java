package org.drillwright.print.pose;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;

/**
 * The last stroke of a count, as its picture shows it.
 *
 * @param by whose stroke it is
 * @param threat where it goes, and what became of it
 * @param path how the blade gets there
 * @param cut whether it is made with the edge
 * @param at the part of the body it is sent to, if one is said
 * @param held whether it holds out the other's blade: with opposition, along the blade, in a bind
 * @param bound whether it carries the other's blade from line to line
 * @param parry where the hand of the one attacked went after it was launched, if it went somewhere known
 */
public record Stroke(
        Side by,
        Threat threat,
        Path path,
        boolean cut,
        Optional<Target> at,
        boolean held,
        boolean bound,
        Optional<Position> parry) {}
