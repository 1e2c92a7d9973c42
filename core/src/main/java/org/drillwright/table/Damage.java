package org.drillwright.table;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What spreadsheets make of a word that looks like a date or a number: it can be seen, but not undone. */
public final class Damage {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)?E[+-]?\\d+");
    private static final Pattern ERROR = Pattern.compile("#+|#[A-Z/0]+[!?]?");
    private static final Pattern DAY_MONTH = Pattern.compile("\\d{1,4}\\.?[-\\s](\\p{L}+)\\.?");
    private static final Pattern MONTH_YEAR = Pattern.compile("(\\p{L}+)\\.?[-\\s]\\d{2,4}");

    private Damage() {}

    /** What a name that is not known seems to have become; nothing if it is just a name. */
    public static Optional<String> of(String cell) {
        if (NUMBER.matcher(cell).matches()) {
            return Optional.of("a number");
        }
        if (isMonth(DAY_MONTH.matcher(cell)) || isMonth(MONTH_YEAR.matcher(cell))) {
            return Optional.of("a date");
        }
        return ERROR.matcher(cell).matches() ? Optional.of("an error") : Optional.empty();
    }

    private static boolean isMonth(Matcher cell) {
        return cell.matches() && TableWords.value("month", cell.group(1)).isPresent();
    }
}
