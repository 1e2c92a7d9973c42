package org.drillwright.explain;

import org.drillwright.phrase.AttackEnd;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Says how an attack ends. */
public final class EndWords {

    private EndWords() {}

    /** A few words that stand behind a semicolon: {@code parried}, or {@code arrives past the parry of octave}. */
    public static Message of(AttackEnd end) {
        return end instanceof AttackEnd.PastTheParry past
                ? Message.of(EndWords.class, "end.past.parry", Terms.of(past.by()))
                : Message.of(EndWords.class, "end." + end.key());
    }
}
