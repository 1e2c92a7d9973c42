package org.drillwright.notation;

/**
 * A term of the vocabulary.
 *
 * @param id its name among the terms of its kind, as the vocabulary's files give it
 */
public record Term(TermKind kind, String id) {

    boolean is(TermKind wanted) {
        return kind == wanted;
    }

    boolean is(TermKind wanted, String name) {
        return kind == wanted && id.equals(name);
    }
}
