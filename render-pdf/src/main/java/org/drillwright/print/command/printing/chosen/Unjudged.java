package org.drillwright.print.command.printing.chosen;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.report.Judged;
import org.drillwright.school.JudgedCounts;

/** What the foot of a card says of counts that could not be judged: silence would be taken for approval. */
final class Unjudged {

    private Unjudged() {}

    /** A sentence on the counts, and one for each part around them; none if all was judged. */
    static List<String> remark(ChosenDrill pick, Labels labels) {
        return JudgedCounts.of(List.of(pick.entry())).gaps().stream()
                .flatMap(gap -> Stream.concat(counts(gap, labels), parts(gap, labels)))
                .toList();
    }

    private static Stream<String> counts(Judged.Gap gap, Labels labels) {
        return gap.counts().isEmpty() ? Stream.empty() : Stream.of(sentence(gap, labels));
    }

    private static Stream<String> parts(Judged.Gap gap, Labels labels) {
        return gap.parts().stream()
                .map(part -> labels.text(Label.valueOf(part.toUpperCase(Locale.ROOT))))
                .map(name -> labels.text(Label.UNCHECKED_PART, name.toLowerCase(Locale.ROOT)));
    }

    private static String sentence(Judged.Gap gap, Labels labels) {
        String numbers = gap.counts().stream().map(String::valueOf).collect(Collectors.joining(", "));
        return labels.text(gap.counts().size() == 1 ? Label.UNCHECKED_COUNT : Label.UNCHECKED_COUNTS, numbers);
    }
}
