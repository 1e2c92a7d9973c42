package org.drillwright.check;

import java.util.Optional;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/**
 * What a rule says of a fault.
 *
 * @param what what is the matter, with a capital at its beginning
 * @param wayOut what may be done instead, as far as it plays
 */
public record Sentence(Severity severity, Message what, WayOut wayOut) {

    public static Optional<Sentence> error(Message what, WayOut wayOut) {
        return Optional.of(new Sentence(Severity.ERROR, what.capital(), wayOut));
    }

    public static Optional<Sentence> warning(Message what, WayOut wayOut) {
        return Optional.of(new Sentence(Severity.WARNING, what.capital(), wayOut));
    }

    public static Optional<Sentence> note(Message what, WayOut wayOut) {
        return Optional.of(new Sentence(Severity.NOTE, what, wayOut));
    }

    public static Optional<Sentence> none() {
        return Optional.empty();
    }
}
