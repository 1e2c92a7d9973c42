package org.drillwright.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Question;
import org.drillwright.source.FieldPath;
import org.drillwright.wording.Message;

/**
 * Which counts of a drill could be judged, and what around them could not.
 *
 * @param counts how many it has
 * @param gaps those that could not be judged
 * @param ends the start, the opening, the closing, where it could not be judged
 */
public record Coverage(int counts, List<Gap> gaps, List<End> ends) {

    public Coverage {
        gaps = List.copyOf(gaps);
        ends = List.copyOf(ends);
    }

    /** Whether all of the drill could be judged; not so if it has no count. */
    public boolean isWhole() {
        return counts > 0 && gaps.isEmpty() && ends.isEmpty();
    }

    /**
     * What stands around the counts and was not read to its end.
     *
     * @param part start, opening or closing
     * @param unknown what is not known for it
     * @param words those that were not read, as they are written
     */
    public record End(String part, List<Message> unknown, List<String> words) {

        public End {
            unknown = List.copyOf(unknown);
            words = List.copyOf(words);
        }
    }

    /**
     * A count that could not be judged.
     *
     * @param step numbered from 0
     * @param unknown what was asked and not known, in the order of its English words
     * @param since where the first of it became unknown, in words; may be empty
     * @param words those of its turns that were not read, as they are written
     */
    public record Gap(int step, List<Message> unknown, Message since, List<String> words) {

        public Gap {
            unknown = unknown.stream()
                    .distinct()
                    .sorted(Comparator.comparing(Message::english))
                    .toList();
            words = List.copyOf(words);
        }
    }

    static Coverage of(Subject subject) {
        List<Gap> gaps = new ArrayList<>();
        List<Count> counts = subject.replay().counts();
        for (int step = 0; step < counts.size(); step++) {
            List<Message> unknown = new ArrayList<>(subject.unknownThroughout());
            Message since = Message.none();
            List<String> words = new ArrayList<>();
            for (Side side : Side.values()) {
                Unread unread = Unread.in(subject, step, side);
                unknown.addAll(unread.unknown());
                words.addAll(unread.words());
            }
            for (Played played : counts.get(step).moves()) {
                for (Question question : played.asked()) {
                    if (!question.known()) {
                        since = since.isEmpty() && !question.since().equals(Fact.HERE) ? question.since() : since;
                        unknown.add(question.words());
                    }
                }
            }
            if (!unknown.isEmpty()) {
                gaps.add(new Gap(step, unknown, since, words));
            }
        }
        return new Coverage(counts.size(), gaps, ends(subject));
    }

    private static List<End> ends(Subject subject) {
        List<End> ends = new ArrayList<>();
        for (String part : List.of("start", "opening", "closing")) {
            Utterance read = subject.script().part(part);
            if (read.isRead()) {
                continue;
            }
            List<Message> unknown = new ArrayList<>(
                    List.of(Message.of(Coverage.class, part.equals("start") ? "unknown.stand" : "unknown.done")));
            if (!part.equals("start") && !Intent.isSaluteByBoth(read)) {
                unknown.add(Message.of(Coverage.class, "unknown.salute"));
            }
            String text = subject.words(FieldPath.of(part)).text();
            ends.add(new End(part, unknown, Unread.words(read, text)));
        }
        return ends;
    }
}
