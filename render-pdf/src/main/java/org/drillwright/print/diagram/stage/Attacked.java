package org.drillwright.print.diagram.stage;

import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.print.pose.Aimed;
import org.drillwright.print.pose.Threat;

/**
 * Whose lines a picture shows.
 *
 * @param closed lines that the hand closes
 * @param doubtful lines of which it closes one or more
 * @param met the line that a stroke comes in, if one comes and it is known
 */
record Attacked(Side side, Set<Line> closed, Set<Line> doubtful, Optional<Line> met) {

    static Attacked of(Side side, Aimed aimed) {
        return new Attacked(
                side,
                aimed.closing().closed(),
                aimed.closing().doubtful(),
                aimed.threat().map(Threat::line).flatMap(line -> line.value()));
    }
}
