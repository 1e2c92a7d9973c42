package org.drillwright.reading;

/**
 * A term of the trade that people look up.
 *
 * @param id its name, the same in all languages
 */
public record GlossaryTerm(TermKind kind, String id) {}
