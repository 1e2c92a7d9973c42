package org.drillwright.print.pose;

import java.util.Optional;
import org.drillwright.notation.Line;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Range;

/**
 * A stroke at one of the two, and what became of it.
 *
 * @param attack the stroke
 * @param from the measure at which it was made
 * @param end how it ends in its count
 */
public record Threat(Attack attack, Range from, AttackEnd end) {

    /** The line that it arrives in, named from the one attacked. */
    public Fact<Line> line() {
        return attack.line();
    }

    /** The line that its feint shows, if it has one and that is another line. */
    public Optional<Line> shown() {
        return attack.feintLine()
                .flatMap(Fact::value)
                .filter(line -> !attack.line().is(line));
    }
}
