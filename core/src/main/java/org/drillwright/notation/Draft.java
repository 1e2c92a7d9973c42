package org.drillwright.notation;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.source.Span;

/** A clause while it is being read: a head and what has been said with it so far. */
final class Draft {

    Term head;
    final Clause.Join join;
    Optional<Term> path = Optional.empty();
    boolean feint;
    Aim aim = Aim.UNSTATED;
    final Set<String> kinds = new HashSet<>();
    Optional<Position> position = Optional.empty();
    Optional<Position> engagement = Optional.empty();
    Optional<Boolean> engaged = Optional.empty();
    Optional<Measure> measure = Optional.empty();
    Optional<Side> subject;
    final Set<Doubt> doubts = EnumSet.noneOf(Doubt.class);
    int times = 1;
    Span span;

    Draft(Term head, Clause.Join join, Optional<Side> subject, Span span) {
        this.head = head;
        this.join = join;
        this.subject = subject;
        this.span = span;
    }

    boolean isHead(String... ids) {
        return Set.of(ids).contains(head.id());
    }

    /** A stroke whose way can still be told: an attack, a riposte, a renewal. */
    boolean isRole() {
        return isHead(
                "attack",
                "false-attack",
                "riposte",
                "counter-riposte",
                "remise",
                "redouble",
                "reprise",
                "stop",
                "time-thrust",
                "counter-time",
                "answer",
                "hit");
    }

    void place(Position named) {
        if (engaged.isPresent() && position.isPresent()) {
            engagement = Optional.of(named);
        } else {
            position = Optional.of(named);
        }
    }

    void reach(Span other) {
        span = span.to(other);
    }
}
