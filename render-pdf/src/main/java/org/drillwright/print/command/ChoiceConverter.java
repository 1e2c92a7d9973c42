package org.drillwright.print.command;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.drillwright.wording.Message;
import picocli.CommandLine.ITypeConverter;

/** Reads one of a few words. */
record ChoiceConverter<T>(List<T> values, Function<T, String> word) implements ITypeConverter<T> {

    ChoiceConverter {
        values = List.copyOf(values);
    }

    static <T> ChoiceConverter<T> of(T[] values, Function<T, String> word) {
        return new ChoiceConverter<>(Arrays.asList(values), word);
    }

    @Override
    public T convert(String written) {
        String wanted = written.toLowerCase(Locale.ROOT);
        return values.stream()
                .filter(value -> word.apply(value).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new NotThatWord(
                        Message.of(ChoiceConverter.class, "not.one.of", written, Message.words(words()))));
    }

    List<String> words() {
        return values.stream().map(word).toList();
    }
}
