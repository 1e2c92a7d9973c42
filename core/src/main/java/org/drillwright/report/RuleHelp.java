package org.drillwright.report;

import org.drillwright.source.Severity;

/**
 * What a report can say of a rule.
 *
 * @param severity the heaviest that it can find
 * @param asks one sentence: what holds where the rule is kept
 * @param help all that is known of it, for people; paragraphs are parted by an empty line
 */
public record RuleHelp(String id, Severity severity, String asks, String help) {}
