package org.drillwright.lexicon;

/**
 * One sense of a word or of words that belong together.
 *
 * @param category what kind of word it is in the grammar
 * @param features what it already says
 * @param lemma as the word list gives it, words parted by blanks
 */
public record LexicalEntry(String category, Features features, String lemma) {}
