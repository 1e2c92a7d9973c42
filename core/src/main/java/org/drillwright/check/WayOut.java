package org.drillwright.check;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.phrase.Attempt.Otherwise;
import org.drillwright.wording.Message;

/** What a master may do about a fault, in whole sentences; {@link WaysOut} makes it of what was played, and nobody else. */
public final class WayOut {

    /** Where nothing plays that a rule could name. */
    public static final WayOut NONE = new WayOut(Message.none(), Message.none(), List.of());

    private final Message words;
    private final Message condition;
    private final List<Otherwise> turns;

    /**
     * @param condition what has to change besides; empty if nothing has
     * @param turns the ways that are no more than one turn told otherwise
     */
    WayOut(Message words, Message condition, List<Otherwise> turns) {
        this.words = words;
        this.condition = condition;
        this.turns = List.copyOf(turns);
    }

    /** Its sentences; empty if there are none. */
    public Message words() {
        return words.then(condition);
    }

    /** Those of its ways that are no more than one turn told otherwise. */
    List<Otherwise> turns() {
        return turns;
    }

    /** This, and the other behind it; a condition of both is told once. */
    public WayOut and(WayOut other) {
        Message first = condition.equals(other.condition) ? words : words();
        return new WayOut(
                first.then(other.words),
                other.condition,
                Stream.concat(turns.stream(), other.turns.stream()).toList());
    }
}
