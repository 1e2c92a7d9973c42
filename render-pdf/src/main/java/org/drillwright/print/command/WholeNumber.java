package org.drillwright.print.command;

import org.drillwright.wording.Message;
import picocli.CommandLine.ITypeConverter;

/** Reads a whole number. */
final class WholeNumber implements ITypeConverter<Integer> {

    @Override
    public Integer convert(String word) {
        try {
            return Integer.valueOf(word.strip());
        } catch (NumberFormatException none) {
            throw new NotThatWord(Message.of(WholeNumber.class, "not.a.whole.number", word));
        }
    }
}
