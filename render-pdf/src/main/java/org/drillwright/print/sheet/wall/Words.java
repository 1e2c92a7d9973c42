package org.drillwright.print.sheet.wall;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.drillwright.model.Language;
import org.drillwright.plan.roster.Naming;
import org.drillwright.record.History;
import org.drillwright.wording.Bundle;

/** The words of the sheets in one language, from a file. */
public final class Words {

    /** Read once, when first asked for. */
    private static final Map<Language, Words> READ = new ConcurrentHashMap<>();

    private final Language language;
    private final Bundle words;

    private Words(Language language, Bundle words) {
        this.language = language;
        this.words = words;
    }

    public static Words in(Language language) {
        return READ.computeIfAbsent(language, Words::read);
    }

    private static Words read(Language language) {
        return new Words(language, Bundle.of(Words.class, "words_" + language.word() + ".properties"));
    }

    public Locale locale() {
        return language.locale();
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    public String text(Word word, Object... values) {
        return words.text(word.key(), values);
    }

    /** What a helper is called within a sentence; whoever teaches is said, not named. */
    public String helper(String name, Naming names) {
        return name.equals(History.INSTRUCTOR) ? text(Word.THE_INSTRUCTOR) : names.of(name);
    }

    /** Such as {@code Wednesday 2026-12-02}, as the language writes it at the beginning of a line. */
    public String day(LocalDate date) {
        return capitalised(within(date));
    }

    /** The same as it is written within a line. */
    public String within(LocalDate date) {
        String pattern = text(date.getDayOfMonth() == 1 ? Word.DATE_FIRST : Word.DATE);
        return date.format(DateTimeFormatter.ofPattern(pattern, locale()));
    }

    public String capitalised(String words) {
        if (words.isEmpty()) {
            return words;
        }
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(locale()) + words.substring(first);
    }
}
