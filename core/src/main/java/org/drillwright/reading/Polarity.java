package org.drillwright.reading;

/** Whether what is told is done, or is said not to be. */
final class Polarity {

    /** Whether an action was forbidden, and nothing told that is done instead. */
    private boolean forbidden;

    /** Whether something was ordered before that plays nothing: 'keep the hand quiet; don't push back'. */
    private boolean ordered;

    /** Whether it was said what is not to be done, so that what stands behind it in the sentence may be part of that. */
    private boolean denied;

    /** Whether a comma stands behind that: 'do not wait, lunge'. */
    private boolean contrasted;

    void sentence() {
        denied = false;
        contrasted = false;
    }

    void comma(boolean colon) {
        denied = denied && !colon;
        contrasted = true;
    }

    void and(SentencePart piece) {
        denied = denied && !piece.features().has("but");
        contrasted = false;
    }

    /**
     * What is told beside that which is done.
     *
     * @param first whether nothing was told before it in the sentence
     * @param alone whether nothing was told before it at all
     */
    void beside(SentencePart piece, boolean first, boolean alone) {
        boolean denial = piece.features().has("deny");
        boolean finite = piece.features().is("deny", "finite");
        denied = denied || (first && denial && !finite);
        contrasted = contrasted && !denial;
        forbidden = forbidden || (alone && denial && !ordered);
    }

    void clause(SentencePart piece) {
        forbidden = forbidden && denied && !(contrasted && piece.isForm("base") && piece.acts());
    }

    void order(SentencePart piece) {
        ordered = ordered || piece.isForm("base");
    }

    boolean isForbidden() {
        return forbidden;
    }

    boolean isDenied() {
        return denied;
    }

    /** Whether the piece may be part of what is not to be done. */
    boolean mayDeny(SentencePart piece) {
        return denied && !(contrasted && (piece.isForm("base") || piece.isForm("3")));
    }
}
