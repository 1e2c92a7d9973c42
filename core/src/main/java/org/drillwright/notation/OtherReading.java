package org.drillwright.notation;

/**
 * What else a text may say.
 *
 * @param utterance it accounts for the same words
 * @param asLikely whether nothing in the words speaks against it; otherwise it is only looked at where the likeliest
 *     reading fails
 */
public record OtherReading(Utterance utterance, boolean asLikely) {}
