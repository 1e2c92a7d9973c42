package org.drillwright.print.command.printing.picks;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.report.Judged;
import org.drillwright.school.JudgedCounts;

/** What the foot of a card says of counts that could not be judged: silence would be taken for approval. */
final class Unjudged {

    private Unjudged() {}

    /** One sentence, or none if all counts were judged. */
    static List<String> remark(Pick pick, Labels labels) {
        return JudgedCounts.of(List.of(pick.entry())).gaps().stream()
                .map(gap -> sentence(gap, labels))
                .toList();
    }

    private static String sentence(Judged.Gap gap, Labels labels) {
        String numbers = gap.counts().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return labels.text(gap.counts().size() == 1 ? Label.UNCHECKED_COUNT : Label.UNCHECKED_COUNTS, numbers);
    }
}
