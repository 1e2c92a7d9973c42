package org.drillwright.notation;

/**
 * One way to say a term.
 *
 * @param words as a reader of the word list sees it
 * @param inflection what the form does in a sentence
 */
public record Form(Term term, Tongue tongue, String words, Inflection inflection) {

    /** What a form does in a sentence. */
    public enum Inflection {
        /** As the vocabulary lists it. */
        LISTED,
        /** A verb's order, statement or gerund made from the listed one. */
        MADE,
        /** The statement about someone: parries. */
        THIRD,
        /** Parrying. */
        GERUND
    }
}
