package org.drillwright.print.diagram;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.model.Language;

/** The words in which pictures are spoken, in one language, from a file. */
final class Words {

    /** Read once, when first asked for. */
    private static final Map<Language, Words> READ = new ConcurrentHashMap<>();

    private final Language language;
    private final Properties words;

    private Words(Language language, Properties words) {
        this.language = language;
        this.words = words;
    }

    static Words in(Language language) {
        return READ.computeIfAbsent(language, Words::read);
    }

    private static Words read(Language language) {
        String file = "words_" + language.word() + ".properties";
        Properties words = new Properties();
        try (InputStream in = Words.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no words for " + language);
            }
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
        return new Words(language, words);
    }

    /** The word for one of several, such as {@code position.quarte}. */
    String of(String kind, Enum<?> value) {
        return text(kind + "." + value.name().toLowerCase(Locale.ROOT).replace('_', '.'));
    }

    /** Words with {@code {0}}, {@code {1}} … filled in. */
    String text(String key, Object... values) {
        String text = words.getProperty(key);
        if (text == null) {
            throw new IllegalStateException("no " + key + " in the words of " + language);
        }
        for (int at = 0; at < values.length; at++) {
            text = text.replace("{" + at + "}", String.valueOf(values[at]));
        }
        return text;
    }
}
