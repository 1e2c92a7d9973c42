package org.drillwright.report;

import org.drillwright.source.Severity;

/**
 * What a report can say of a rule.
 *
 * @param severity the heaviest that it can find
 * @param asks one sentence: what holds where the rule is kept
 * @param why the reason for it, in a sentence or two; may be empty
 * @param breaks an example that breaks the rule; empty if there is none
 * @param keeps an example that keeps it; empty if there is none
 */
public record RuleHelp(String id, Severity severity, String asks, String why, String breaks, String keeps) {

    public RuleHelp(String id, Severity severity, String asks, String why) {
        this(id, severity, asks, why, "", "");
    }

    /** All that is known of it, for people; paragraphs are parted by an empty line. */
    public String text() {
        return asks
                + (why.isEmpty() ? "" : "\n\nWhy: " + why)
                + (breaks.isEmpty() ? "" : "\n\nBreaks it:\n\n" + breaks)
                + (keeps.isEmpty() ? "" : "\nKeeps it:\n\n" + keeps.stripTrailing());
    }

    /** The same in Markdown. */
    public String markdown() {
        return asks
                + (why.isEmpty() ? "" : "\n\n**Why:** " + why)
                + block("Breaks it", breaks)
                + block("Keeps it", keeps);
    }

    private static String block(String heading, String yaml) {
        return yaml.isEmpty() ? "" : "\n\n**" + heading + ":**\n\n```yaml\n" + yaml + "```";
    }
}
