package org.drillwright.print.command.printing;

import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.report.Judged;
import org.drillwright.school.JudgedCounts;

/** What the foot of a card says of counts that could not be judged: silence would be taken for approval. */
final class Unjudged {

    private Unjudged() {}

    /** One sentence, or none if all counts were judged. */
    static List<String> remark(Pick pick) {
        return JudgedCounts.of(List.of(pick.entry())).gaps().stream()
                .map(Unjudged::sentence)
                .toList();
    }

    private static String sentence(Judged.Gap gap) {
        String numbers = gap.counts().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return "Not fully checked: " + (gap.counts().size() == 1 ? "count " : "counts ") + numbers + ".";
    }
}
