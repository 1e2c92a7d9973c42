package org.drillwright.model;

/**
 * What one side does on one count, in the author's words.
 *
 * @param say what is printed
 * @param means what is read instead, in words of the trade; empty if {@code say} is read
 */
public record Turn(String say, String means) {

    /** A turn that is printed and read in the same words. */
    public static Turn of(String say) {
        return new Turn(say, "");
    }

    /** The words that carry the meaning. */
    public String read() {
        return means.isEmpty() ? say : means;
    }
}
