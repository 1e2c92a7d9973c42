package org.drillwright.school;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.check.RuleText;
import org.drillwright.check.jury.Rules;
import org.drillwright.read.ReadingRule;
import org.drillwright.register.RecordRule;
import org.drillwright.report.RuleHelp;
import org.drillwright.source.Severity;

/** What reading and the rules say of themselves, for reports. */
public final class RuleHelps {

    private RuleHelps() {}

    /** In the order in which people meet them; each id once. */
    public static List<RuleHelp> all() {
        return Stream.concat(
                        Stream.concat(
                                Stream.of(ReadingRule.values())
                                        .map(rule -> new RuleHelp(rule.id(), Severity.ERROR, rule.asks(), rule.why())),
                                Stream.of(RecordRule.values())
                                        .map(rule -> new RuleHelp(rule.id(), Severity.ERROR, rule.asks(), rule.why()))),
                        Rules.texts().stream().map(RuleHelps::of))
                .toList();
    }

    private static RuleHelp of(RuleText rule) {
        return new RuleHelp(rule.id(), rule.severity(), rule.asks(), rule.why(), rule.breaks(), rule.keeps());
    }
}
