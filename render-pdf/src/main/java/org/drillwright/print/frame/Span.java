package org.drillwright.print.frame;

import java.util.Locale;
import java.util.Optional;

/**
 * What a run of text is besides its look.
 *
 * @param language of its words, where it is not the document's
 * @param to the name of the {@link Node.Anchor} that it leads to
 */
public record Span(Optional<Locale> language, Optional<String> to) {

    public static final Span PLAIN = new Span(Optional.empty(), Optional.empty());

    public static Span in(Locale language) {
        return new Span(Optional.of(language), Optional.empty());
    }

    /** The same words leading to a place. */
    public Span to(String name) {
        return new Span(language, Optional.of(name));
    }
}
