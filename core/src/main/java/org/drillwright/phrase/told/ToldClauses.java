package org.drillwright.phrase.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Span;

/** What a text tells to whoever plays it, words that were not read among it. */
public final class ToldClauses {

    private ToldClauses() {}

    /** The clauses of a text; where a word of it was not read and no clause says what that leaves open, one more does. */
    public static List<Clause> of(Utterance utterance) {
        boolean told = utterance.clauses().stream()
                .anyMatch(clause -> !clause.isCertain() || clause.action() instanceof Action.Unread);
        if (told || utterance.unread().isEmpty()) {
            return utterance.clauses();
        }
        Span word = utterance.unread().get(0);
        List<Clause> clauses = new ArrayList<>(utterance.clauses());
        clauses.add(new Clause(new Action.Unread(""), Optional.empty(), word, Clause.Join.COMMA));
        return clauses;
    }
}
