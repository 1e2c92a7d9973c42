package org.drillwright.check;

import org.drillwright.phrase.Attempt.Otherwise;
import org.drillwright.source.Span;

/**
 * A turn that plays in place of one that a rule finds fault with.
 *
 * @param rule the id of the rule
 * @param span where its finding stands
 */
public record Remedy(String rule, Span span, Otherwise turn) {}
