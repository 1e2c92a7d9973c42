package org.drillwright.read;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.drillwright.source.FieldPath;

/**
 * What the readers ask of a group of keys. Two answer: {@link MappingReader} from what stands in a file, and {@link
 * ShapeRecorder}, which only notes what was asked. So what a file may hold is said in one place, the readers themselves.
 */
interface Keys {

    /** Where the keys stand in their file. */
    FieldPath path();

    Optional<String> text(String key, int longest);

    /** A text behind whose key nothing need stand yet. */
    Optional<String> textToCome(String key, int longest);

    List<String> texts(String key, int longest);

    /** One of the choices, written with capitals and accents or without. */
    <T> Optional<T> choice(String key, List<T> choices, Function<T, String> word);

    <T> List<T> choices(String key, List<T> choices, Function<T, String> word);

    /** A name that is declared elsewhere, letter by letter. */
    Optional<String> name(String key, List<String> known);

    List<String> names(String key, List<String> known);

    /** A name that is declared in the same file. */
    Optional<String> nameOfThisFile(String key, List<String> known);

    OptionalInt wholeNumber(String key, int least, int most);

    /** Seconds, with or without a fraction, above 0 and at most an hour. */
    Optional<Duration> seconds(String key);

    /** A length in metres with at most two decimals and under 1000, as whole centimetres; 0 only if it may be. */
    OptionalInt metres(String key, boolean above0);

    Optional<Boolean> yesOrNo(String key);

    Optional<LocalDate> date(String key);

    /** A time of day, hours and minutes. */
    Optional<LocalTime> time(String key);

    <T> Optional<T> group(String key, Function<Keys, T> read);

    <T> List<T> groups(String key, int most, Function<Keys, T> read);

    <T> Optional<T> textOrGroup(String key, int longest, Function<String, T> text, Function<Keys, T> group);

    /** Values under keys that the author chooses. */
    <T> Map<String, T> byName(BiFunction<Keys, String, Optional<T>> read);

    /**
     * Reads the value of a key without which the rest can still be judged: an error in it is told, the value is lost, and
     * the file is read on.
     */
    <T> T dispensable(String key, Supplier<T> read);

    /** Says that a key may not be missing. */
    void need(String key);

    /** Says that of some keys one at least must be there; the last is the one to ask for. */
    void needOneOf(List<String> keys);

    /** A text that may not be missing; empty, with a finding, if it is. */
    default String needed(String key, int longest) {
        need(key);
        return text(key, longest).orElse("");
    }

    /** Reports the keys that nobody asked for, and those that are missing. */
    void finish();
}
