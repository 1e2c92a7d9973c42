package org.drillwright.print.phone;

import org.drillwright.model.Language;
import org.drillwright.wording.Bundle;

/** The words of the page itself in one language, from a file. */
final class Words {

    private final Bundle words;

    Words(Language language) {
        this.words = Bundle.in(Words.class, language.locale());
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    String text(Word word, Object... values) {
        return words.text(word.key(), values);
    }

    /** The same for a number, which fills the first gap. */
    String counted(Word word, long count, Object... more) {
        return words.counted(word.key(), count, more);
    }
}
