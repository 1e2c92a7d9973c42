package org.drillwright.school;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.RuleText;
import org.drillwright.check.Rules;
import org.drillwright.read.ReadingRule;
import org.drillwright.record.RecordRule;
import org.drillwright.report.RuleHelp;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** What reading and the rules say of themselves, for reports. */
public final class RuleHelps {

    private RuleHelps() {}

    /** In the order in which people meet them; each id once. */
    public static List<RuleHelp> all() {
        return Stream.concat(
                        Stream.concat(
                                Stream.of(ReadingRule.values()).map(rule -> of(rule.id(), rule.why())),
                                Stream.of(RecordRule.values()).map(rule -> of(rule.id(), rule.why()))),
                        Rules.texts().stream().map(RuleHelps::of))
                .toList();
    }

    private static RuleHelp of(String id, String why) {
        int end = why.indexOf('.') + 1;
        return new RuleHelp(
                id,
                Severity.ERROR,
                Message.plain(why.substring(0, end)),
                Message.plain(why.substring(end).strip()));
    }

    private static RuleHelp of(RuleText rule) {
        return new RuleHelp(rule.id(), rule.severity(), rule.asks(), rule.why(), rule.breaks(), rule.keeps());
    }
}
