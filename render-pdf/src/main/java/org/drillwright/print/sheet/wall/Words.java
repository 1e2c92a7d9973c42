package org.drillwright.print.sheet.wall;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.model.Language;
import org.drillwright.plan.roster.Naming;
import org.drillwright.record.History;

/** The words of the sheets in one language, from a file. */
public final class Words {

    /** Read once, when first asked for. */
    private static final Map<Language, Words> READ = new ConcurrentHashMap<>();

    private static final Pattern GAP = Pattern.compile("\\{(\\d)}");

    private final Language language;
    private final Properties words;

    private Words(Language language, Properties words) {
        this.language = language;
        this.words = words;
    }

    public static Words in(Language language) {
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

    Locale locale() {
        return language.locale();
    }

    /** With {@code {0}}, {@code {1}} … filled in. */
    public String text(Word word, Object... values) {
        String text = words.getProperty(word.key());
        if (text == null) {
            throw new IllegalStateException("no " + word.key() + " in the words of " + language);
        }
        return GAP.matcher(text).replaceAll(gap -> {
            int at = Integer.parseInt(gap.group(1));
            return Matcher.quoteReplacement(at < values.length ? String.valueOf(values[at]) : gap.group());
        });
    }

    /** What a helper is called within a sentence; whoever teaches is said, not named. */
    public String helper(String name, Naming names) {
        return name.equals(History.INSTRUCTOR) ? text(Word.THE_INSTRUCTOR) : names.of(name);
    }

    /** Such as {@code Wednesday 2026-12-02}, as the language writes it. */
    public String day(LocalDate date) {
        String pattern = text(date.getDayOfMonth() == 1 ? Word.DATE_FIRST : Word.DATE);
        return capitalised(date.format(DateTimeFormatter.ofPattern(pattern, locale())));
    }

    public String capitalised(String words) {
        if (words.isEmpty()) {
            return words;
        }
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(locale()) + words.substring(first);
    }
}
