package org.drillwright.lexicon;

import org.drillwright.source.Span;

/**
 * A word, a number or a stop of a text.
 *
 * @param folded without capitals and accents; for a quotation {@link #QUOTE}
 * @param written without capitals, with its accents: in French <em>coupé</em> is another word than <em>coupe</em>; as folded
 *     where it does not stand in the text so
 * @param span where it stands in the text as written; words that were one as written share it
 */
public record Token(String folded, String written, Span span) {

    /** A call in quotation marks, whatever it says. */
    public static final String QUOTE = "<quote>";

    public Token(String folded, Span span) {
        this(folded, folded, span);
    }

    public boolean isWord() {
        int first = folded.codePointAt(0);
        return folded.equals(QUOTE)
                || Character.isLetterOrDigit(first)
                || Character.getType(first) == Character.OTHER_NUMBER;
    }
}
