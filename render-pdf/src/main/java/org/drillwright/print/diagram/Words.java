package org.drillwright.print.diagram;

import java.util.Locale;
import org.drillwright.model.Language;
import org.drillwright.wording.Bundle;

/** The words in which pictures are spoken, in one language, from a file. */
final class Words {

    private final Bundle words;

    private Words(Bundle words) {
        this.words = words;
    }

    static Words in(Language language) {
        return new Words(Bundle.in(Words.class, language.locale()));
    }

    /** The word for one of several, such as {@code position.quarte}. */
    String of(String kind, Enum<?> value) {
        return text(kind + "." + value.name().toLowerCase(Locale.ROOT).replace('_', '.'));
    }

    /** Words with {@code {0}}, {@code {1}} … filled in. */
    String text(String key, Object... values) {
        return words.text(key, values);
    }
}
