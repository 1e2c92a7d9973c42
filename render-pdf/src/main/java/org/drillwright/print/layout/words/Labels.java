package org.drillwright.print.layout.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;
import org.drillwright.model.Form;
import org.drillwright.model.Language;
import org.drillwright.model.Weapon;

/** The card's own words in one language. */
public final class Labels {

    private final Language language;
    private final Properties words;

    private Labels(Language language, Properties words) {
        this.language = language;
        this.words = words;
    }

    public static Labels in(Language language) {
        String file = "labels_" + language.word() + ".properties";
        Properties words = new Properties();
        try (InputStream in = Labels.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no labels for " + language);
            }
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
        return new Labels(language, words);
    }

    public Language language() {
        return language;
    }

    /** A label with {@code {0}}, {@code {1}} … filled in. */
    public String text(Label label, Object... values) {
        String text = words.getProperty(label.key());
        if (text == null) {
            throw new IllegalStateException("no " + label.key() + " in the labels of " + language);
        }
        for (int at = 0; at < values.length; at++) {
            text = text.replace("{" + at + "}", String.valueOf(values[at]));
        }
        return text;
    }

    /** What a card says that was made from a drill in another language. */
    public String madeFrom(Language other) {
        return words.getProperty(Label.MADE_FROM.key() + "." + other.word(), text(Label.MADE_FROM));
    }

    public String weapon(Weapon weapon) {
        return text(
                switch (weapon) {
                    case FOIL -> Label.WEAPON_FOIL;
                    case EPEE -> Label.WEAPON_EPEE;
                    case SABRE -> Label.WEAPON_SABRE;
                    case NONE -> Label.WEAPON_NONE;
                });
    }

    public String form(Form form) {
        return text(
                switch (form) {
                    case PARTNER -> Label.FORM_PARTNER;
                    case SOLO -> Label.FORM_SOLO;
                });
    }
}
