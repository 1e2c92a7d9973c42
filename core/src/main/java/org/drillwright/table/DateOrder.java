package org.drillwright.table;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.wording.Message;

/** In which order the figures of a date stand. */
public enum DateOrder {
    DAY_FIRST("day-first", 3, 2, 1),
    MONTH_FIRST("month-first", 3, 1, 2),
    YEAR_FIRST("year-first", 1, 2, 3);

    /** Three numbers with one and the same sign between them; a time of midnight behind them says nothing. */
    private static final Pattern FIGURES = Pattern.compile("(\\d{1,2})([/.-])\\s?(\\d{1,2})\\2\\s?(\\d{2}|\\d{4})"
            + "(?:\\s+(?:0?0:00(?::00)?|12:00(?::00)?\\s*AM))?");

    private static final int CENTURY = 2000;

    private final String word;
    private final int year;
    private final int month;
    private final int day;

    DateOrder(String word, int year, int month, int day) {
        this.word = word;
        this.year = year;
        this.month = month;
        this.day = day;
    }

    /** The word that settings use. */
    public String word() {
        return word;
    }

    /** The same in a sentence. */
    public Message words() {
        return Message.of(DateOrder.class, "order." + word);
    }

    /** Whether a cell is written in one of these orders. */
    public static boolean isFigures(String cell) {
        return FIGURES.matcher(cell).matches();
    }

    /** What a cell says in this order, if it can say a day; a year of two figures is one of 2000 and later. */
    Optional<LocalDate> read(String cell) {
        Matcher figures = FIGURES.matcher(cell);
        if (!figures.matches() || (this == YEAR_FIRST && !couldBeginWithYear(figures))) {
            return Optional.empty();
        }
        int[] numbers = {
            0,
            Integer.parseInt(figures.group(1)),
            Integer.parseInt(figures.group(3)),
            Integer.parseInt(figures.group(4))
        };
        int written = numbers[year];
        try {
            return Optional.of(LocalDate.of(written < 100 ? CENTURY + written : written, numbers[month], numbers[day]));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    /** Two figures for the year in front are written with hyphens only, as in 26-09-14. */
    private static boolean couldBeginWithYear(Matcher figures) {
        return figures.group(2).equals("-")
                && figures.group(1).length() == 2
                && figures.group(4).length() == 2;
    }
}
