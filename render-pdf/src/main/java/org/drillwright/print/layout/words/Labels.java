package org.drillwright.print.layout.words;

import org.drillwright.model.Form;
import org.drillwright.model.Language;
import org.drillwright.model.Weapon;
import org.drillwright.wording.Bundle;

/** The card's own words in one language. */
public final class Labels {

    private final Language language;
    private final Bundle words;

    private Labels(Language language, Bundle words) {
        this.language = language;
        this.words = words;
    }

    public static Labels in(Language language) {
        return new Labels(language, Bundle.in(Labels.class, "labels", language.locale()));
    }

    public Language language() {
        return language;
    }

    /** A label with {@code {0}}, {@code {1}} … filled in. */
    public String text(Label label, Object... values) {
        return words.text(label.key(), values);
    }

    /** What a card says that was made from a drill in another language. */
    public String madeFrom(Language other) {
        return words.find(Label.MADE_FROM.key() + "." + other.word()).orElseGet(() -> text(Label.MADE_FROM));
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
