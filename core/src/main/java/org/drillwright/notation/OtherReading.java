package org.drillwright.notation;

/**
 * What else a text may say.
 *
 * @param utterance it accounts for the same words
 */
public record OtherReading(Utterance utterance, Kind kind) {

    /** Why it is not the likeliest. */
    public enum Kind {
        /** The words speak a little against it, so that it is only looked at where the likeliest reading fails. */
        NEARLY,

        /** Nothing in the words speaks against it. */
        AS_LIKELY,

        /** He of whom it tells, or the partner, is the one whose turn it is: a handbook tells of both so. */
        OF_ONESELF,

        /**
         * The partner of whom it tells to 'you' is the one whose turn it is; meant only where all of a side is told so, for a
         * drill may be written from the other's view.
         */
        OF_YOUR_PARTNER
    }

    public boolean asLikely() {
        return kind == Kind.AS_LIKELY;
    }
}
