package org.drillwright.check.fencing;

import java.util.List;
import org.drillwright.check.Coverage;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.phrase.Where;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Every count could be judged. */
public final class NotFullyChecked implements Rule {

    private static final RuleText TEXT =
            new RuleText(NotFullyChecked.class, "not-fully-checked", Severity.WARNING, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        judgeCounts(subject, findings);
        for (Coverage.End end : subject.coverage().ends()) {
            findings.warning(
                    TEXT.id(),
                    subject.span(FieldPath.of(end.part())),
                    said("part", Where.part(end.part())),
                    said("unknown", Message.listed(end.unknown()))
                            .then(unread(end.words()))
                            .then(said("say")));
        }
    }

    private static void judgeCounts(Subject subject, Findings findings) {
        List<Coverage.Gap> gaps = subject.coverage().gaps();
        if (gaps.isEmpty()) {
            return;
        }
        List<String> counts = gaps.stream()
                .map(gap -> Integer.toString(subject.count(gap.step())))
                .toList();
        Coverage.Gap first = gaps.get(0);
        Message unknown = Message.listed(first.unknown());
        findings.warning(
                TEXT.id(),
                subject.spanInStep(first.step(), ""),
                Message.counted(NotFullyChecked.class, "not-fully-checked.count", gaps.size(), Message.words(counts)),
                (first.since().isEmpty() ? said("unknown", unknown) : said("unknown.since", unknown, first.since()))
                        .then(unread(first.words()))
                        .then(said("say")));
    }

    private static Message unread(List<String> words) {
        List<Message> quoted = words.stream().map(word -> said("quoted", word)).toList();
        return quoted.isEmpty() ? Message.none() : said("not-read", Message.listed(quoted));
    }

    private static Message said(String key, Object... values) {
        return Message.of(NotFullyChecked.class, "not-fully-checked." + key, values);
    }
}
