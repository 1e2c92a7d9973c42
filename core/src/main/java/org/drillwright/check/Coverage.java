package org.drillwright.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Question;

/**
 * Which counts of a drill could be judged.
 *
 * @param counts how many it has
 * @param gaps those that could not be judged
 */
public record Coverage(int counts, List<Gap> gaps) {

    public Coverage {
        gaps = List.copyOf(gaps);
    }

    /**
     * A count that could not be judged.
     *
     * @param step numbered from 0
     * @param unknown what was asked and not known
     * @param since where the first of it became unknown, in words; may be empty
     */
    public record Gap(int step, Set<String> unknown, String since) {

        public Gap {
            unknown = Set.copyOf(unknown);
        }
    }

    static Coverage of(Subject subject) {
        List<Gap> gaps = new ArrayList<>();
        List<Count> counts = subject.replay().counts();
        for (int step = 0; step < counts.size(); step++) {
            Set<String> unknown = new LinkedHashSet<>();
            String since = "";
            for (Side side : Side.values()) {
                if (isUnread(subject, step, side)) {
                    unknown.add("what the " + side.word() + " does");
                }
            }
            for (Played played : counts.get(step).moves()) {
                for (Question question : played.asked()) {
                    if (!question.known()) {
                        since = since.isEmpty() ? question.since() : since;
                        unknown.add("the " + question.part());
                    }
                }
            }
            if (!unknown.isEmpty()) {
                gaps.add(new Gap(step, unknown, since));
            }
        }
        return new Coverage(counts.size(), gaps);
    }

    /** A turn of which nothing could be read, or a part of which is an action that is not known. */
    private static boolean isUnread(Subject subject, int step, Side side) {
        boolean callersWord = !subject.isPartnerDrill() && side == Side.LEADER;
        boolean there = !subject.turnWords(step, side).text().isEmpty();
        Utterance turn = subject.turn(step, side);
        boolean nothing = turn.clauses().isEmpty();
        boolean part = turn.clauses().stream().anyMatch(clause -> clause.action() instanceof Action.Unread);
        return !callersWord && there && (nothing || part);
    }
}
