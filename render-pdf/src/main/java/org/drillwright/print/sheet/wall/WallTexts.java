package org.drillwright.print.sheet.wall;

import java.time.LocalDate;
import java.util.Locale;
import org.drillwright.model.Language;
import org.drillwright.plan.roster.Naming;
import org.drillwright.register.History;
import org.drillwright.wording.Bundle;
import org.drillwright.wording.Message;

/** The words of the sheets in one language, from a file. */
public final class WallTexts {

    private final Language language;
    private final Bundle words;

    private WallTexts(Language language) {
        this.language = language;
        this.words = Bundle.in(WallTexts.class, language.locale());
    }

    public static WallTexts in(Language language) {
        return new WallTexts(language);
    }

    public Locale locale() {
        return language.locale();
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    public String text(WallText word, Object... values) {
        return words.text(word.key(), values);
    }

    /** The same for a number, which fills the first gap. */
    public String counted(WallText word, long count, Object... more) {
        return words.counted(word.key(), count, more);
    }

    /** What a helper is called within a sentence; whoever teaches is said, not named. */
    public String helper(String name, Naming names) {
        return name.equals(History.INSTRUCTOR) ? text(WallText.THE_INSTRUCTOR) : names.of(name);
    }

    /** Such as {@code Wednesday 2026-12-02}, as the language writes it at the beginning of a line. */
    public String day(LocalDate date) {
        return capitalised(within(date));
    }

    /** The same as it is written within a line. */
    public String within(LocalDate date) {
        return Message.weekday(date).in(locale());
    }

    public String capitalised(String words) {
        return Message.plain(words).capital().in(locale());
    }
}
