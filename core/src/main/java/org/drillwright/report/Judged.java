package org.drillwright.report;

import java.util.List;

/**
 * How much of the material could be judged.
 *
 * @param counts of all drills that could be read
 * @param gaps drills with counts that could not be judged
 */
public record Judged(int counts, List<Gap> gaps) {

    public Judged {
        gaps = List.copyOf(gaps);
    }

    /**
     * A drill that is not fully checked.
     *
     * @param counts the numbers of the counts that could not be judged
     */
    public record Gap(String drill, List<Integer> counts) {

        public Gap {
            counts = List.copyOf(counts);
        }

        @Override
        public String toString() {
            return drill + ": "
                    + String.join(", ", counts.stream().map(String::valueOf).toList());
        }
    }

    public int notJudged() {
        return gaps.stream().mapToInt(gap -> gap.counts().size()).sum();
    }

    /** One sentence, such as {@code 34 counts: 31 judged, 3 not (disengage-from-sixte: 2, 5, 6)}. */
    public String sentence() {
        String all = counts + (counts == 1 ? " count" : " counts") + ": ";
        if (gaps.isEmpty()) {
            return all + "all judged";
        }
        String named = String.join("; ", gaps.stream().map(Gap::toString).toList());
        return all + (counts - notJudged()) + " judged, " + notJudged() + " not (" + named + ")";
    }
}
