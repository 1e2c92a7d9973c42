package org.drillwright.notation;

import java.util.Optional;
import org.drillwright.source.Span;

/**
 * A stretch of a text as the vocabulary knows it: a form of a term, a stop, or a word that is not known.
 *
 * @param form the form, if the words are known
 * @param folded the words, small and without accents; a stop is its own sign
 * @param isStop whether it is a stop
 */
record Lexeme(Optional<Form> form, String folded, Span span, boolean isStop) {

    boolean isUnknown() {
        return form.isEmpty() && !isStop;
    }

    boolean is(TermKind kind) {
        return form.isPresent() && form.get().term().kind() == kind;
    }

    boolean is(TermKind kind, String id) {
        return form.isPresent() && form.get().term().is(kind, id);
    }

    boolean isAction() {
        return form.isPresent() && form.get().term().kind().isAction();
    }

    boolean has(Form.Inflection inflection) {
        return form.isPresent() && form.get().inflection() == inflection;
    }

    /** The term's name; empty for a stop or an unknown word. */
    String id() {
        return form.map(known -> known.term().id()).orElse("");
    }
}
