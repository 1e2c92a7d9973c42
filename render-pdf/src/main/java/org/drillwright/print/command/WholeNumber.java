package org.drillwright.print.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number. */
final class WholeNumber implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String word) {
        try {
            return Integer.valueOf(word.strip());
        } catch (NumberFormatException none) {
            throw new TypeConversionException("'" + word + "' is not a whole number, such as 3");
        }
    }
}
