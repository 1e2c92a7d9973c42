package org.drillwright.print.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day: year, month and day in figures. */
final class DayWord implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String word) {
        try {
            return LocalDate.parse(word);
        } catch (DateTimeParseException strange) {
            throw new TypeConversionException("'" + word + "' is not year, month and day, such as 2026-09-01");
        }
    }
}
