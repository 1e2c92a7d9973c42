package org.drillwright.print.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.print.impose.Shift;
import org.drillwright.wording.Message;
import picocli.CommandLine.ITypeConverter;

/** Reads a shift of backs: two numbers of millimetres with a comma between. */
final class ShiftWord implements ITypeConverter<Shift> {

    private static final Pattern TWO = Pattern.compile("(-?\\d+(?:\\.\\d+)?),(-?\\d+(?:\\.\\d+)?)");

    @Override
    public Shift convert(String word) {
        Matcher two = TWO.matcher(word);
        if (!two.matches()) {
            throw new NotThatWord(Message.of(ShiftWord.class, "not.a.shift", word));
        }
        try {
            return new Shift(Double.parseDouble(two.group(1)), Double.parseDouble(two.group(2)));
        } catch (IllegalArgumentException tooFar) {
            throw new NotThatWord(Message.of(ShiftWord.class, "shift.too.far", (int) Shift.MOST));
        }
    }
}
