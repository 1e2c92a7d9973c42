package org.drillwright.notation;

import org.drillwright.source.Span;

/**
 * A word or a stop of a text.
 *
 * @param folded small letters without accents; a stop is its own sign
 * @param span where it stands in the text
 */
record Token(String folded, Span span, boolean isWord) {}
