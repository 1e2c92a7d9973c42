package org.drillwright.print.phone;

import org.drillwright.model.Language;
import org.drillwright.wording.Bundle;

/** The words of the page itself in one language, from a file. */
final class PhoneTexts {

    private final Bundle words;

    PhoneTexts(Language language) {
        this.words = Bundle.in(PhoneTexts.class, language.locale());
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    String text(PhoneText word, Object... values) {
        return words.text(word.key(), values);
    }

    /** The same for a number, which fills the first gap. */
    String counted(PhoneText word, long count, Object... more) {
        return words.counted(word.key(), count, more);
    }
}
