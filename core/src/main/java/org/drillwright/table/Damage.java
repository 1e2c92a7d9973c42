package org.drillwright.table;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.wording.Message;

/** What spreadsheets make of a word that looks like a date or a number: it can be seen, but not undone. */
public final class Damage {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(?:[.,]\\d+)?E[+-]?\\d+");
    private static final Pattern ERROR = Pattern.compile("#+|#[A-Z/0]+[!?]?");
    private static final Pattern DAY_MONTH = Pattern.compile("\\d{1,4}\\.?[-\\s](\\p{L}+)\\.?");
    private static final Pattern MONTH_YEAR = Pattern.compile("(\\p{L}+)\\.?[-\\s]\\d{2,4}");

    private Damage() {}

    /** What a name that is not known seems to have become, as an object; nothing if it is just a name. */
    public static Optional<Message> of(String cell) {
        if (NUMBER.matcher(cell).matches()) {
            return Optional.of(Message.of(Damage.class, "damage.number"));
        }
        if (isMonth(DAY_MONTH.matcher(cell)) || isMonth(MONTH_YEAR.matcher(cell))) {
            return Optional.of(Message.of(Damage.class, "damage.date"));
        }
        return ERROR.matcher(cell).matches() ? Optional.of(Message.of(Damage.class, "damage.error")) : Optional.empty();
    }

    private static boolean isMonth(Matcher cell) {
        return cell.matches() && TableWords.value("month", cell.group(1)).isPresent();
    }
}
