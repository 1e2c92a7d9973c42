package org.drillwright.wording;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something that is said to a person. What it says is settled when it is made, and in which language only when it is shown:
 * {@link #in}. Two messages are equal if they say the same.
 */
public sealed interface Message {

    /** Nothing at all. */
    static Message none() {
        return Plain.NOTHING;
    }

    /** In the words of a language; in English where there are none. */
    default String in(Locale language) {
        return in(language, "");
    }

    /** In English, as tests and those who take English for granted read it. */
    default String english() {
        return in(Locale.ENGLISH);
    }

    /** @param form the form that a gap asks for, such as {@code of}; the plain one is taken where there is no such */
    String in(Locale language, String form);

    /** Whether it says nothing. */
    default boolean isEmpty() {
        return false;
    }

    /** What stands in its gaps, or what it joins. */
    default List<?> within() {
        return List.of();
    }

    /** What it is made of, at any depth: itself, and the messages, strings and numbers in its gaps. */
    default Stream<Object> parts() {
        return Stream.concat(
                Stream.of(this),
                within().stream().flatMap(part -> part instanceof Message said ? said.parts() : Stream.of(part)));
    }

    /** Words that are the same in every language: what somebody wrote, a key of a file, a command. */
    static Message plain(String words) {
        return words.isEmpty() ? none() : new Plain(words);
    }

    /**
     * Words of a room.
     *
     * @param room any class of the room; its words lie beside it, in {@code words_LANGUAGE.properties}
     * @param key which of its words
     * @param values what fills the gaps: messages, strings, numbers
     */
    static Message of(Class<?> room, String key, Object... values) {
        return new Worded(room, key, List.of(values));
    }

    /**
     * Words that depend on a number: those under {@code key.one}, {@code key.other} or what other forms the language has
     * ({@link Plurals}).
     *
     * @param count fills the first gap
     * @param more fill the gaps after it
     */
    static Message counted(Class<?> room, String key, long count, Object... more) {
        return new Counted(
                room,
                key,
                count,
                Stream.concat(Stream.of((Object) count), Stream.of(more)).toList());
    }

    /** A day as it stands in a sentence; one that is typed into a file or behind an option is written as files write it. */
    static Message day(LocalDate date) {
        return new Day(date, "day");
    }

    /** The same with the day of the week before it. */
    static Message weekday(LocalDate date) {
        return new Day(date, "weekday");
    }

    /** A number with its decimal sign, such as {@code 1.5} or {@code 1,5}. */
    static Message decimal(BigDecimal number) {
        return new Decimal(number);
    }

    /** Centimetres as metres, without a unit: {@code 1.5}. */
    static Message metres(int centimetres) {
        return decimal(BigDecimal.valueOf(centimetres, 2).stripTrailingZeros());
    }

    /** Between which one may choose: {@code quarte, sixte, or octave}. */
    static Message either(List<Message> some) {
        return new Listed("either", some);
    }

    /** The same without a comma before the last: {@code quarte or circular sixte}. */
    static Message or(List<Message> some) {
        return new Listed("or", some);
    }

    /** All of which are meant: {@code quarte, sixte and octave}. */
    static Message all(List<Message> some) {
        return new Listed("all", some);
    }

    /** Side by side, with a comma between two. */
    static Message listed(List<Message> some) {
        return new Listed("listed", some);
    }

    /** Side by side as clauses of one sentence, with a semicolon between two. */
    static Message clauses(List<Message> some) {
        return new Listed("clauses", some);
    }

    /** Words of one's own, as {@link #listed}. */
    static Message words(List<String> some) {
        return listed(some.stream().map(Message::plain).toList());
    }

    /** This, and another sentence behind it; what is empty leaves no gap. */
    default Message then(Message next) {
        return isEmpty() ? next : next.isEmpty() ? this : new Listed("then", List.of(this, next));
    }

    /** What somebody wrote, in the language's quotation marks. */
    static Message quoted(String words) {
        return Message.of(Message.class, "quoted", words);
    }

    /** A heading, and what stands behind its colon. */
    static Message titled(String heading, String words) {
        return Message.of(Message.class, "titled", heading, words);
    }

    /** In one language whatever is asked for: what is to be typed into a drill. */
    default Message always(Locale language) {
        return new Always(this, language);
    }

    /** With a capital at its beginning. */
    default Message capital() {
        return isEmpty() ? this : new Capital(this);
    }

    /** As a sentence: with a capital and a full stop; nothing if it is empty. */
    default Message sentence() {
        return isEmpty() ? this : Message.of(Message.class, "sentence", capital());
    }

    /** See {@link #plain}. */
    record Plain(String words) implements Message {

        private static final Plain NOTHING = new Plain("");

        @Override
        public String in(Locale language, String form) {
            return words;
        }

        @Override
        public boolean isEmpty() {
            return words.isEmpty();
        }

        @Override
        public String toString() {
            return words;
        }
    }

    /** See {@link #of}. */
    record Worded(Class<?> room, String key, List<Object> values) implements Message {
        @Override
        public String in(Locale language, String form) {
            Bundle words = Bundle.in(room, language);
            String text = (form.isEmpty() ? Optional.<String>empty() : words.find(key + "." + form))
                    .orElseGet(() -> words.wanted(key));
            return words.filled(text, values, (value, wanted) -> told(value, language, wanted));
        }

        @Override
        public List<?> within() {
            return values;
        }

        @Override
        public String toString() {
            return english();
        }
    }

    /** See {@link #counted}. */
    record Counted(Class<?> room, String key, long count, List<Object> values) implements Message {
        @Override
        public String in(Locale language, String form) {
            String words = Bundle.in(room, language).counted(key, count);
            return new Worded(room, words, values).in(language, form);
        }

        @Override
        public List<?> within() {
            return values;
        }

        @Override
        public String toString() {
            return english();
        }
    }

    /** See {@link #decimal}. */
    record Decimal(BigDecimal number) implements Message {
        @Override
        public String in(Locale language, String form) {
            return number.toPlainString()
                    .replace('.', DecimalFormatSymbols.getInstance(language).getDecimalSeparator());
        }

        @Override
        public String toString() {
            return english();
        }
    }

    /** See {@link #day} and {@link #weekday}. */
    record Day(LocalDate date, String pattern) implements Message {
        @Override
        public String in(Locale language, String form) {
            String pattern = Bundle.in(Message.class, language)
                    .wanted(date.getDayOfMonth() == 1 ? this.pattern + ".first" : this.pattern);
            return DateTimeFormatter.ofPattern(pattern, language).format(date);
        }

        @Override
        public String toString() {
            return english();
        }
    }

    /** Several, joined as {@code how} says: the words {@code how.two}, {@code how.last}, {@code how.more}. */
    record Listed(String how, List<Message> some) implements Message {

        public Listed {
            some = List.copyOf(some);
        }

        @Override
        public String in(Locale language, String form) {
            List<String> told = some.stream().map(one -> one.in(language, form)).toList();
            if (told.isEmpty()) {
                return "";
            }
            Bundle words = Bundle.in(Message.class, language);
            String all = told.get(0);
            for (int at = 1; at < told.size(); at++) {
                String place = told.size() == 2 ? ".two" : at == told.size() - 1 ? ".last" : ".more";
                all = words.text(how + place, all, told.get(at));
            }
            return all;
        }

        @Override
        public boolean isEmpty() {
            return some.stream().allMatch(Message::isEmpty);
        }

        @Override
        public List<?> within() {
            return some;
        }

        @Override
        public String toString() {
            return english();
        }
    }

    /** See {@link #capital}. */
    record Capital(Message of) implements Message {
        @Override
        public String in(Locale language, String form) {
            String words = of.in(language, form);
            if (words.isEmpty()) {
                return words;
            }
            int first = words.offsetByCodePoints(0, 1);
            return words.substring(0, first).toUpperCase(language) + words.substring(first);
        }

        @Override
        public boolean isEmpty() {
            return of.isEmpty();
        }

        @Override
        public List<?> within() {
            return List.of(of);
        }

        @Override
        public String toString() {
            return english();
        }
    }

    /** See {@link #always}. */
    record Always(Message of, Locale language) implements Message {
        @Override
        public String in(Locale other, String form) {
            return of.in(language, form);
        }

        @Override
        public boolean isEmpty() {
            return of.isEmpty();
        }

        @Override
        public List<?> within() {
            return List.of(of);
        }

        @Override
        public String toString() {
            return english();
        }
    }

    private static String told(Object value, Locale language, String form) {
        return value instanceof Message message ? message.in(language, form) : Objects.toString(value);
    }
}
