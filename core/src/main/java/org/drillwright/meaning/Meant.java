package org.drillwright.meaning;

import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Position;

/** What a clause says is done: an action, or what completes the one before it. */
public sealed interface Meant {

    record Does(Action action) implements Meant {}

    /**
     * An action that is told as done when another begins: '<em>having parried quarte</em>, riposte'. It may be done on this
     * count, or have been done on one before.
     */
    record Had(Meant meant) implements Meant {}

    /**
     * A stroke's end told apart from its beginning: 'slide under <em>and hit low</em>'.
     *
     * @param strikes whether it is a stroke by itself where there is none to complete
     */
    record Lands(Aim aim, boolean strikes) implements Meant {}

    /**
     * The stroke, parry or engagement before it once more, elsewhere: 'parry quarte, <em>then sixte</em>', 'cut to the
     * head, <em>then to the flank</em>'.
     *
     * @param position where the hand or blade goes, if that is said
     */
    record Again(Optional<Position> position, Aim aim) implements Meant {}

    /** What is let come: it is received, unless it is met, evaded or gone from behind that. */
    record Comes() implements Meant {}

    /** What is told to arrive, by nobody: one's own stroke that was told before, or else what one receives. */
    record Arrives() implements Meant {}
}
