package org.drillwright.print.phone;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Properties;
import org.drillwright.model.Language;

/** The words of the page itself in one language, from a file. */
final class Words {

    private final Language language;
    private final Properties words = new Properties();

    Words(Language language) {
        this.language = language;
        String file = "words_" + language.word() + ".properties";
        try {
            words.load(new StringReader(Resources.text(file)));
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    String text(Word word, Object... values) {
        String text = words.getProperty(word.key());
        if (text == null) {
            throw new IllegalStateException("no " + word.key() + " in the words of " + language);
        }
        for (int at = 0; at < values.length; at++) {
            text = text.replace("{" + at + "}", String.valueOf(values[at]));
        }
        return text;
    }
}
