package org.drillwright.source;

/**
 * A value as it stands in a file.
 *
 * @param key the key's words, or the item's first place in a list
 * @param value the whole value, with its quotes
 * @param words the value's text with the place of each unit; empty for a list or a mapping
 */
public record Field(Span key, Span value, Written words) {}
