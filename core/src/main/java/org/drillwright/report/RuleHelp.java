package org.drillwright.report;

import java.util.Locale;
import org.drillwright.source.Severity;
import org.drillwright.wording.Bundle;
import org.drillwright.wording.Message;

/**
 * What a report can say of a rule.
 *
 * @param severity the heaviest that it can find
 * @param asks one sentence: what holds where the rule is kept
 * @param why the reason for it, in a sentence or two; may be empty
 * @param breaks an example that breaks the rule; empty if there is none
 * @param keeps an example that keeps it; empty if there is none
 */
public record RuleHelp(String id, Severity severity, Message asks, Message why, String breaks, String keeps) {

    public RuleHelp(String id, Severity severity, Message asks, Message why) {
        this(id, severity, asks, why, "", "");
    }

    /** All that is known of it, for people; paragraphs are parted by an empty line. */
    public String text(Locale language) {
        Bundle words = Bundle.in(RuleHelp.class, language);
        return asks.in(language)
                + (why.isEmpty() ? "" : "\n\n" + words.text("rule.why", why.in(language)))
                + (breaks.isEmpty() ? "" : "\n\n" + words.text("rule.breaks") + "\n\n" + breaks)
                + (keeps.isEmpty() ? "" : "\n" + words.text("rule.keeps") + "\n\n" + keeps.stripTrailing());
    }

    /** The same in Markdown. */
    public String markdown(Locale language) {
        Bundle words = Bundle.in(RuleHelp.class, language);
        return asks.in(language)
                + (why.isEmpty() ? "" : "\n\n" + words.text("rule.why.bold", why.in(language)))
                + block(words.text("rule.breaks"), breaks)
                + block(words.text("rule.keeps"), keeps);
    }

    private static String block(String heading, String yaml) {
        return yaml.isEmpty() ? "" : "\n\n**" + heading + "**\n\n```yaml\n" + yaml + "```";
    }
}
