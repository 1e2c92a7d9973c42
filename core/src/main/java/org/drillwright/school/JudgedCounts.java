package org.drillwright.school;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.report.Judged;

/** Adds up what could be judged of some drills. */
public final class JudgedCounts {

    private JudgedCounts() {}

    public static Judged of(List<SchoolFolder.Entry> entries) {
        int counts = 0;
        List<Judged.Gap> gaps = new ArrayList<>();
        List<String> unread = new ArrayList<>();
        for (SchoolFolder.Entry entry : entries) {
            if (entry.subject().isPresent()) {
                Subject subject = entry.subject().get();
                Coverage coverage = subject.coverage();
                counts += coverage.counts();
                List<String> parts =
                        coverage.ends().stream().map(Coverage.End::part).toList();
                if (!coverage.gaps().isEmpty() || !parts.isEmpty()) {
                    gaps.add(new Judged.Gap(subject.drill().id(), numbers(subject, coverage), parts));
                }
            } else {
                unread.add(entry.name());
            }
        }
        return new Judged(counts, gaps, unread);
    }

    private static List<Integer> numbers(Subject subject, Coverage coverage) {
        return coverage.gaps().stream().map(gap -> subject.count(gap.step())).toList();
    }
}
