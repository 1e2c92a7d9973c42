package org.drillwright.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drillwright.model.Side;
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
     * @param words those of its turns that were not read, as they are written
     */
    public record Gap(int step, Set<String> unknown, String since, List<String> words) {

        public Gap {
            unknown = Set.copyOf(unknown);
            words = List.copyOf(words);
        }
    }

    static Coverage of(Subject subject) {
        List<Gap> gaps = new ArrayList<>();
        List<Count> counts = subject.replay().counts();
        for (int step = 0; step < counts.size(); step++) {
            Set<String> unknown = new LinkedHashSet<>();
            String since = "";
            List<String> words = new ArrayList<>();
            for (Side side : Side.values()) {
                Unread unread = Unread.in(subject, step, side);
                unknown.addAll(unread.unknown());
                words.addAll(unread.words());
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
                gaps.add(new Gap(step, unknown, since, words));
            }
        }
        return new Coverage(counts.size(), gaps);
    }
}
