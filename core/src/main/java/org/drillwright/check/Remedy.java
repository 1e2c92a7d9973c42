package org.drillwright.check;

import java.util.List;
import org.drillwright.phrase.Attempt.Otherwise;
import org.drillwright.source.Span;

/**
 * A turn that plays in place of one that a rule finds fault with.
 *
 * @param rule the id of the rule
 * @param span where its finding stands
 */
public record Remedy(String rule, Span span, Otherwise turn) {

    /** All that the rules would name, in the order of the rules. */
    public static List<Remedy> all(Subject subject) {
        return Rules.ALL.stream()
                .filter(RefusalRule.class::isInstance)
                .map(RefusalRule.class::cast)
                .flatMap(rule -> rule.remedies(subject).stream())
                .distinct()
                .toList();
    }
}
