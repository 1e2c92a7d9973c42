package org.drillwright.print.command;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.print.impose.Shift;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a shift of backs: two numbers of millimetres with a comma between. */
final class ShiftWord implements ITypeConverter<Shift> {

    private static final Pattern TWO = Pattern.compile("(-?\\d+(?:\\.\\d+)?),(-?\\d+(?:\\.\\d+)?)");

    @Override
    public Shift convert(String word) {
        Matcher two = TWO.matcher(word);
        if (!two.matches()) {
            throw new TypeConversionException("'" + word + "' is not two numbers of millimetres, such as 0.5,-1");
        }
        try {
            return new Shift(Double.parseDouble(two.group(1)), Double.parseDouble(two.group(2)));
        } catch (IllegalArgumentException tooFar) {
            throw new TypeConversionException("a shift is at most " + (int) Shift.MOST + " mm either way");
        }
    }
}
