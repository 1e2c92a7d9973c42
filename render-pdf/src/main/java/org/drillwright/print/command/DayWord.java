package org.drillwright.print.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import org.drillwright.wording.Message;
import picocli.CommandLine.ITypeConverter;

/** Reads a day: year, month and day in figures. */
final class DayWord implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String word) {
        try {
            return LocalDate.parse(word);
        } catch (DateTimeParseException strange) {
            throw new NotThatWord(Message.of(DayWord.class, "not.a.day", word));
        }
    }
}
