package org.drillwright.wording;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The words of a room in one language: a file of keys in UTF-8 that lies with the room. */
public final class Bundle {

    private static final Pattern GAP = Pattern.compile("\\{(\\d)(?::([a-z]+))?\\}");

    /** A room's words of one kind in one language. */
    private record Place(Class<?> room, String kind, String language) {}

    /** Each file is read once, when it is first asked for. */
    private static final Map<Place, Bundle> READ = new ConcurrentHashMap<>();

    private final String file;
    private final Locale language;
    private final Properties words;

    /** @param language of its words */
    private Bundle(String file, Locale language, Properties words) {
        this.file = file;
        this.language = language;
        this.words = words;
    }

    /**
     * @param room a class of the room
     * @throws IllegalStateException if the room has no such file
     */
    private static Bundle of(Class<?> room, String kind, Locale language) {
        String file = file(kind, language);
        Properties words = new Properties();
        try (InputStream in = room.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("no " + file);
            }
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " cannot be read", broken);
        }
        return new Bundle(file, language, words);
    }

    /** The words of a room in a language, {@code words_LANGUAGE.properties}; in English where the room has none in it. */
    public static Bundle in(Class<?> room, Locale language) {
        return in(room, "words", language);
    }

    /** The same of another kind than words, {@code KIND_LANGUAGE.properties}. */
    public static Bundle in(Class<?> room, String kind, Locale language) {
        return READ.computeIfAbsent(new Place(room, kind, language.getLanguage()), place -> {
            boolean there = room.getResource(file(kind, language)) != null;
            return of(room, kind, there ? language : Locale.ENGLISH);
        });
    }

    private static String file(String kind, Locale language) {
        return kind + "_" + language.getLanguage() + ".properties";
    }

    /** Every key of the file. */
    public Set<String> keys() {
        return words.stringPropertyNames();
    }

    public Optional<String> find(String key) {
        return Optional.ofNullable(words.getProperty(key));
    }

    /**
     * Words with {@code {0}}, {@code {1}} … filled in; a gap that a value brings with it stays as it is. A gap with a form,
     * {@code {0:of}}, asks a message for that form of its words, such as its genitive.
     *
     * @throws IllegalStateException if the file lacks the key
     */
    public String text(String key, Object... values) {
        return filled(wanted(key), List.of(values), (value, form) -> String.valueOf(value));
    }

    /**
     * The same for a number, which fills the first gap: the words under {@code key.FORM}, in the plural form that the number
     * takes.
     */
    public String counted(String key, long count, Object... more) {
        Object[] values =
                Stream.concat(Stream.of((Object) count), Stream.of(more)).toArray();
        return text(counted(key, count), values);
    }

    /** The key of the words for a number. */
    String counted(String key, long count) {
        return key + "." + Plurals.in(language).form(count);
    }

    /** The words of a key with its gaps. */
    String wanted(String key) {
        return find(key).orElseThrow(() -> new IllegalStateException("no " + key + " in " + file));
    }

    /** A value as it is to stand in a gap, in the form that the gap asks for; the form is empty where it asks for none. */
    interface Telling {
        String tell(Object value, String form);
    }

    /** A text with its gaps filled, and the words before them as the sound of what fills them asks. */
    String filled(String text, List<Object> values, Telling telling) {
        if (values.isEmpty() || text.indexOf('{') < 0) {
            return text;
        }
        Matcher gaps = GAP.matcher(text);
        Euphony euphony = Euphony.in(language);
        StringBuilder filled = new StringBuilder();
        while (gaps.find()) {
            int number = Integer.parseInt(gaps.group(1));
            String form = Objects.requireNonNullElse(gaps.group(2), "");
            String value = number < values.size() ? telling.tell(values.get(number), form) : gaps.group();
            gaps.appendReplacement(filled, "");
            euphony.join(filled, value);
            filled.append(value);
        }
        return gaps.appendTail(filled).toString();
    }
}
