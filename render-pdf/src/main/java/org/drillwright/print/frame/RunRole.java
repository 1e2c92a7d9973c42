package org.drillwright.print.frame;

import java.util.Locale;
import java.util.Optional;

/**
 * What a run of text is besides its look.
 *
 * @param language of its words, where it is not the document's
 * @param to the name of the {@link Node.Anchor} that it leads to
 * @param rightToLeft whether it is part of a line that is read from right to left
 */
public record RunRole(Optional<Locale> language, Optional<String> to, boolean rightToLeft) {

    public static final RunRole PLAIN = new RunRole(Optional.empty(), Optional.empty(), false);

    public static RunRole in(Locale language) {
        return new RunRole(Optional.of(language), Optional.empty(), false);
    }

    /** The same words leading to a place. */
    public RunRole to(String name) {
        return new RunRole(language, Optional.of(name), rightToLeft);
    }

    /** The same words in a line that is read so. */
    public RunRole rightToLeft(boolean other) {
        return new RunRole(language, to, other);
    }

    /** Whether it neither is in another language nor leads anywhere. */
    public boolean isPlain() {
        return language.isEmpty() && to.isEmpty();
    }
}
