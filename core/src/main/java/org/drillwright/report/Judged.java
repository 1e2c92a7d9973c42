package org.drillwright.report;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.wording.Message;

/**
 * How much of the material could be judged.
 *
 * @param counts of all drills that could be read
 * @param gaps drills that could not be judged as a whole
 * @param unread drills of which nothing was judged, for their files or the settings could not be read
 */
public record Judged(int counts, List<Gap> gaps, List<String> unread) {

    private static final int NAMED = 5;

    public Judged {
        gaps = List.copyOf(gaps);
        unread = List.copyOf(unread);
    }

    /**
     * A drill that is not fully checked.
     *
     * @param counts the numbers of the counts that could not be judged
     * @param parts what around the counts could not: start, opening, closing
     */
    public record Gap(String drill, List<Integer> counts, List<String> parts) {

        public Gap {
            counts = List.copyOf(counts);
            parts = List.copyOf(parts);
        }

        private Message words() {
            Stream<Message> around = parts.stream().map(part -> Message.of(Judged.class, "part." + part));
            Stream<Message> numbers = counts.stream().map(String::valueOf).map(Message::plain);
            return Message.of(
                    Judged.class,
                    "judged.gap",
                    drill,
                    Message.listed(Stream.concat(around, numbers).toList()));
        }
    }

    public int notJudged() {
        return gaps.stream().mapToInt(gap -> gap.counts().size()).sum();
    }

    /**
     * What was judged and what was not, such as {@code 34 counts: 31 judged, 3 not (disengage-from-sixte: 2, 5, 6)}, with no
     * full stop behind it. That all is judged is said only if there is a count, and nothing was left out anywhere.
     */
    public Message sentence() {
        Message counted = counted();
        return unread.isEmpty() ? counted : Message.of(Judged.class, "judged.unread", counted, named());
    }

    private Message named() {
        Message first = Message.words(
                unread.stream().limit(NAMED).map(DisplayWidth::shown).toList());
        int more = unread.size() - NAMED;
        return more > 0 ? Message.of(Judged.class, "judged.more", first, more) : first;
    }

    private Message counted() {
        if (counts == 0) {
            return Message.of(Judged.class, "judged.none");
        }

        if (gaps.isEmpty()) {
            return Message.counted(Judged.class, unread.isEmpty() ? "judged.all" : "judged.those", counts);
        }
        Message named = gaps.stream()
                .map(Gap::words)
                .reduce((before, next) -> Message.of(Judged.class, "judged.gaps", before, next))
                .orElseThrow();
        return notJudged() == 0
                ? Message.counted(Judged.class, "judged.around", counts, named)
                : Message.counted(Judged.class, "judged.part", counts, counts - notJudged(), notJudged(), named);
    }
}
