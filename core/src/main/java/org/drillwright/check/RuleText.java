package org.drillwright.check;

import org.drillwright.source.Severity;
import org.drillwright.wording.Message;
import org.drillwright.wording.PackedFile;

/**
 * What people are told of a rule. Its words lie in its room, under {@code ID.asks} and {@code ID.why}; its two examples
 * beside them, in {@code ID.breaks.yaml} and {@code ID.keeps.yaml}, which are read when they are asked for. An example is a
 * drill, or the lines of one that matter and that {@link Example} completes; that of a rule of the folder, the lines of its
 * files that matter.
 *
 * @param rule its class, beside which all this lies
 * @param id as findings carry it
 * @param severity the heaviest that it can find
 * @param safety whether it is about keeping people whole; then it can't be accepted away
 */
public record RuleText(Class<?> rule, String id, Severity severity, boolean safety) {

    /** One sentence: what holds in a drill that keeps the rule. */
    public Message asks() {
        return Message.of(rule, id + ".asks");
    }

    /** One sentence: the reason for it. */
    public Message why() {
        return Message.of(rule, id + ".why");
    }

    /** The example that breaks it: a comment line of carets stands under the very words. */
    public String breaks() {
        return PackedFile.text(rule, id + ".breaks.yaml");
    }

    /** The example that keeps it. */
    public String keeps() {
        return PackedFile.text(rule, id + ".keeps.yaml");
    }
}
