package org.drillwright.phrase;

/**
 * Something that a rule asked of the state.
 *
 * @param part what was asked: line, distance, mask, guard, contact
 * @param known whether it was known
 * @param since where it became unknown, in words
 */
public record Question(String part, boolean known, String since) {}
