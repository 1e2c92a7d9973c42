package org.drillwright.check;

import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/**
 * What people are told of a rule. The two examples are drills, or parts of one that {@link Example} completes; in the one
 * that breaks the rule, a comment line of carets stands under the very words.
 *
 * @param id as findings carry it
 * @param severity the heaviest that it can find
 * @param safety whether it is about keeping people whole; then it can't be accepted away
 * @param asks one sentence: what holds in a drill that keeps the rule
 * @param why one sentence: the reason for it
 */
public record RuleText(
        String id, Severity severity, boolean safety, Message asks, Message why, String breaks, String keeps) {

    /**
     * A rule whose words lie in its room, under {@code ID.asks} and {@code ID.why}.
     *
     * @param rule the class of the rule
     */
    public static RuleText of(
            Class<?> rule, String id, Severity severity, boolean safety, String breaks, String keeps) {
        return new RuleText(
                id, severity, safety, Message.of(rule, id + ".asks"), Message.of(rule, id + ".why"), breaks, keeps);
    }
}
