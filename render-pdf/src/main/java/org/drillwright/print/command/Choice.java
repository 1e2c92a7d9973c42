package org.drillwright.print.command;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads one of a few words. */
record Choice<T>(List<T> values, Function<T, String> word) implements ITypeConverter<T> {

    Choice {
        values = List.copyOf(values);
    }

    static <T> Choice<T> of(T[] values, Function<T, String> word) {
        return new Choice<>(Arrays.asList(values), word);
    }

    @Override
    public T convert(String written) {
        String wanted = written.toLowerCase(Locale.ROOT);
        return values.stream()
                .filter(value -> word.apply(value).equals(wanted))
                .findFirst()
                .orElseThrow(() ->
                        new TypeConversionException("'" + written + "' is not one of " + String.join(", ", words())));
    }

    List<String> words() {
        return values.stream().map(word).toList();
    }
}
