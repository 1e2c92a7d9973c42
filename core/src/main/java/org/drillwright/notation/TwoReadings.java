package org.drillwright.notation;

import org.drillwright.source.Span;

/**
 * Words that can be read two ways; the reader does not guess.
 *
 * @param span the words, within the text
 * @param one what they can mean
 * @param other what else they can mean
 */
public record TwoReadings(Span span, String one, String other) {}
