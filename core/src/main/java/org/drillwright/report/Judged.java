package org.drillwright.report;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

        @Override
        public String toString() {
            return drill + ": "
                    + Stream.concat(parts.stream(), counts.stream().map(String::valueOf))
                            .collect(Collectors.joining(", "));
        }
    }

    public int notJudged() {
        return gaps.stream().mapToInt(gap -> gap.counts().size()).sum();
    }

    /**
     * What was judged and what was not, such as {@code 34 counts: 31 judged, 3 not (disengage-from-sixte: 2, 5, 6)}, with no
     * full stop behind it. That all is judged is said only if there is a count, and nothing was left out anywhere.
     */
    public String sentence() {
        String sentence = counted();
        return unread.isEmpty() ? sentence : sentence + ". Not judged at all: " + named();
    }

    private String named() {
        String first = unread.stream().limit(NAMED).map(Columns::shown).collect(Collectors.joining(", "));
        int more = unread.size() - NAMED;
        return more > 0 ? first + " and " + more + " more" : first;
    }

    private String counted() {
        if (counts == 0) {
            return "There is no count to judge";
        }
        String all = counts + (counts == 1 ? " count" : " counts") + ": ";
        if (gaps.isEmpty()) {
            return all + (unread.isEmpty() ? "all judged" : counts + " judged");
        }
        String named = String.join("; ", gaps.stream().map(Gap::toString).toList());
        return notJudged() == 0
                ? all + counts + " judged, but not the text around them (" + named + ")"
                : all + (counts - notJudged()) + " judged, " + notJudged() + " not (" + named + ")";
    }
}
