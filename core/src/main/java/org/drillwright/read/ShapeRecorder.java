package org.drillwright.read;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import org.drillwright.source.FieldPath;

/** Lets a reader ask for its keys, answers that nothing is there, and keeps what was asked. */
final class ShapeRecorder implements Keys {

    /** Stands for any key of the author's; no file can hold it. */
    private static final String ANY = "";

    private final Map<String, Shape> shapes = new LinkedHashMap<>();
    private final List<String> needed = new ArrayList<>();
    private final List<String> oneOf = new ArrayList<>();

    private ShapeRecorder() {}

    /** The keys that a reader asks for. */
    static Shape.Group of(Function<Keys, ?> reader) {
        ShapeRecorder recorder = new ShapeRecorder();
        var unused = reader.apply(recorder);
        Map<String, Shape> keys = new LinkedHashMap<>(recorder.shapes);
        Optional<Shape> others = Optional.ofNullable(keys.remove(ANY));
        return new Shape.Group(keys, others, recorder.needed, recorder.oneOf);
    }

    @Override
    public Optional<String> textToCome(String key, int longest) {
        return text(key, longest);
    }

    @Override
    public Optional<String> text(String key, int longest) {
        shapes.put(key, new Shape.Text(longest));
        return Optional.empty();
    }

    @Override
    public List<String> texts(String key, int longest) {
        shapes.put(key, new Shape.Items(new Shape.Text(longest), ReadingLimits.ITEMS));
        return List.of();
    }

    @Override
    public <T> Optional<T> choice(String key, List<T> choices, Function<T, String> word) {
        shapes.put(key, word(key, choices.stream().map(word).toList(), true));
        return Optional.empty();
    }

    @Override
    public <T> List<T> choices(String key, List<T> choices, Function<T, String> word) {
        Shape one = word(key, choices.stream().map(word).toList(), true);
        shapes.put(key, new Shape.Items(one, ReadingLimits.ITEMS));
        return List.of();
    }

    private static Shape.Word word(String key, List<String> known, boolean folded) {
        return new Shape.Word(known, folded, ValueWords.also(key, known));
    }

    @Override
    public FieldPath path() {
        return FieldPath.ROOT;
    }

    @Override
    public Optional<String> name(String key, List<String> known) {
        shapes.put(key, word(key, known, false));
        return Optional.empty();
    }

    @Override
    public List<String> names(String key, List<String> known) {
        shapes.put(key, new Shape.Items(new Shape.Word(known, false, List.of()), ReadingLimits.ITEMS));
        return List.of();
    }

    /** Which names the file declares is not known before there is one. */
    @Override
    public Optional<String> nameOfThisFile(String key, List<String> known) {
        return text(key, ReadingLimits.SHORT_TEXT);
    }

    @Override
    public OptionalInt wholeNumber(String key, int least, int most) {
        shapes.put(key, new Shape.Whole(least, most));
        return OptionalInt.empty();
    }

    @Override
    public Optional<Duration> seconds(String key) {
        shapes.put(key, Shape.Value.SECONDS);
        return Optional.empty();
    }

    @Override
    public OptionalInt metres(String key, boolean above0) {
        shapes.put(key, above0 ? Shape.Value.METRES_ABOVE_0 : Shape.Value.METRES);
        return OptionalInt.empty();
    }

    @Override
    public Optional<Boolean> yesOrNo(String key) {
        shapes.put(key, Shape.Value.YES_OR_NO);
        return Optional.empty();
    }

    @Override
    public Optional<LocalDate> date(String key) {
        shapes.put(key, Shape.Value.DATE);
        return Optional.empty();
    }

    @Override
    public Optional<LocalTime> time(String key) {
        shapes.put(key, Shape.Value.TIME);
        return Optional.empty();
    }

    @Override
    public <T> Optional<T> group(String key, Function<Keys, T> read) {
        shapes.put(key, of(read));
        return Optional.empty();
    }

    @Override
    public <T> List<T> groups(String key, int most, Function<Keys, T> read) {
        shapes.put(key, new Shape.Items(of(read), most));
        return List.of();
    }

    @Override
    public <T> Optional<T> textOrGroup(String key, int longest, Function<String, T> text, Function<Keys, T> group) {
        shapes.put(key, new Shape.Either(new Shape.Text(longest), of(group)));
        return Optional.empty();
    }

    @Override
    public <T> Map<String, T> byName(BiFunction<Keys, String, Optional<T>> read) {
        var unused = read.apply(this, ANY);
        return Map.of();
    }

    @Override
    public <T> T dispensable(String key, Supplier<T> read) {
        return read.get();
    }

    @Override
    public void need(String key) {
        needed.add(key);
    }

    @Override
    public void needOneOf(List<String> keys) {
        oneOf.addAll(keys);
    }

    @Override
    public void finish() {}
}
