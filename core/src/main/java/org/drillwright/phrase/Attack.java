package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;

/**
 * A point or an edge on its way to somebody.
 *
 * @param line where it arrives, named from the one attacked
 * @param height the height at which it arrives, where the words tell it; the line may be unknown all the same
 * @param feintLine the line that a compound attack shows first; empty if it is not compound
 * @param role what it is in the phrase
 * @param meant whether it means to touch and an answer is owed; a feint or a mere extension does not
 * @param feint whether it is a feint: shown, and never to arrive
 * @param contact whether it goes along the partner's blade (opposition, a bind, a glide)
 * @param drawn whether its first movement has drawn a parry
 * @param beyondTable whether the table of parries says nothing of it: it goes where the weapon's rules leave out, or to an
 *     arm, which is reached round any guard
 * @param reach the greatest measure from which it arrives: 0, or 1 at an épée's forearm
 */
public record Attack(
        Fact<Line> line,
        Optional<Height> height,
        Optional<Fact<Line>> feintLine,
        Action.Role role,
        boolean meant,
        boolean feint,
        boolean contact,
        boolean drawn,
        boolean beyondTable,
        int reach) {

    Attack afterDrawing() {
        return new Attack(line, height, feintLine, role, meant, feint, contact, true, beyondTable, reach);
    }
}
