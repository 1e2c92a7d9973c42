package org.drillwright.table;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.wording.Message;

/**
 * A column of dates, read as a whole: one cell alone doesn't say which of its figures is the month. Cells that begin with a
 * year of four figures are certain; all others are in one order.
 */
public final class DateColumn {

    /** What became of the cells that are not certain. */
    public enum State {
        /** There are none. */
        CERTAIN,
        /** The school's settings name their order. */
        TOLD,
        /** One order was taken, for only in this one all are days, or days on which there are classes. */
        TAKEN,
        /** Several orders are left, and nothing decides. */
        ASKED,
        /** There is no order in which each of them is a day. */
        MIXED
    }

    private static final Pattern YEAR_FIRST =
            Pattern.compile("(\\d{4})([/.-])(\\d{1,2})\\2(\\d{1,2})\\.?(?:[T\\s]+0?0:00(?::00)?)?");

    private static final Pattern SERIAL = Pattern.compile("\\d{5}(?:[.,]0+)?");

    /** Day 0 of a spreadsheet, by which it counts days; some begin 1462 days later. */
    private static final LocalDate DAY_0 = LocalDate.of(1899, 12, 30);

    /** Different days that are needed before days of the week decide. */
    private static final int ENOUGH = 2;

    private final State state;
    private final List<DateOrder> orders;

    private DateColumn(State state, List<DateOrder> orders) {
        this.state = state;
        this.orders = orders;
    }

    /**
     * Looks at all cells of a column.
     *
     * @param told the order that the school's settings name
     * @param classes days on which there are classes, asked for only where they could decide
     */
    public static DateColumn of(
            Collection<String> column, Optional<DateOrder> told, Supplier<? extends Collection<LocalDate>> classes) {
        Set<String> open = column.stream().filter(DateOrder::isFigures).collect(Collectors.toSet());
        if (open.isEmpty()) {
            return new DateColumn(State.CERTAIN, List.of());
        }
        if (told.isPresent()) {
            return new DateColumn(State.TOLD, List.of(told.get()));
        }
        List<DateOrder> possible = differing(open);
        if (possible.size() < 2) {
            return new DateColumn(possible.isEmpty() ? State.MIXED : State.TAKEN, possible);
        }
        List<LocalDate> known = Stream.concat(
                        classes.get().stream(), column.stream().flatMap(cell -> certain(cell).stream()))
                .sorted()
                .toList();
        return decided(possible, open, known)
                .map(order -> new DateColumn(State.TAKEN, List.of(order)))
                .orElseGet(() -> new DateColumn(State.ASKED, possible));
    }

    /**
     * The order in which all cells fall on days of the week on which there are classes, if it is only one. Classes up to the
     * column's end count first; only if in no order all cells fall on their days, those of the week in which the next class
     * is, and so on, week by week. So what was decided stays, whatever is planned for later weeks.
     *
     * @param known days of classes, the earliest first
     */
    private static Optional<DateOrder> decided(List<DateOrder> possible, Set<String> open, List<LocalDate> known) {
        Map<DateOrder, List<LocalDate>> days = new EnumMap<>(DateOrder.class);
        possible.forEach(order -> days.put(order, days(order, open)));
        LocalDate end = days.values().stream()
                .map(Collections::max)
                .min(Comparator.naturalOrder())
                .orElseThrow();
        Set<DayOfWeek> weekdays = EnumSet.noneOf(DayOfWeek.class);
        for (int at = 0; at < known.size(); at++) {
            weekdays.add(known.get(at).getDayOfWeek());
            if (at + 1 == known.size() || known.get(at + 1).isAfter(end)) {
                List<DateOrder> fitting = possible.stream()
                        .filter(order -> allOn(weekdays, days.getOrDefault(order, List.of())))
                        .toList();
                if (!fitting.isEmpty()) {
                    return fitting.size() == 1 ? Optional.of(fitting.get(0)) : Optional.empty();
                }
                end = at + 1 == known.size() ? end : known.get(at + 1).plusDays(DayOfWeek.values().length - 1);
            }
        }
        return Optional.empty();
    }

    /** The orders in which each cell is a day; of those that say the same days only one. */
    private static List<DateOrder> differing(Set<String> open) {
        List<DateOrder> possible = new ArrayList<>();
        List<List<LocalDate>> said = new ArrayList<>();
        for (DateOrder order : DateOrder.values()) {
            List<LocalDate> days = days(order, open);
            if (days.size() == open.size() && !said.contains(days)) {
                possible.add(order);
                said.add(days);
            }
        }
        return possible;
    }

    private static List<LocalDate> days(DateOrder order, Set<String> open) {
        return open.stream().flatMap(cell -> order.read(cell).stream()).toList();
    }

    private static boolean allOn(Set<DayOfWeek> weekdays, List<LocalDate> days) {
        return days.stream().distinct().count() >= ENOUGH
                && days.stream().map(LocalDate::getDayOfWeek).allMatch(weekdays::contains);
    }

    public State state() {
        return state;
    }

    /** The orders that are left; one where it is known. */
    public List<DateOrder> orders() {
        return orders;
    }

    /** The day that a cell says; nothing if it is none, or if that is still to be asked. */
    public Optional<LocalDate> date(String cell) {
        return certain(cell)
                .or(() -> state == State.ASKED || state == State.MIXED
                        ? Optional.empty()
                        : orders.stream().findFirst().flatMap(order -> order.read(cell)));
    }

    /** Whether a cell is a day, only in which order is not known. */
    public boolean isOpen(String cell) {
        return (state == State.ASKED || state == State.MIXED) && DateOrder.isFigures(cell);
    }

    /** The day that a cell of five figures would be if it counts days as most spreadsheets do. */
    public static Optional<LocalDate> counted(String cell) {
        return SERIAL.matcher(cell).matches()
                ? Optional.of(DAY_0.plusDays(Integer.parseInt(cell.substring(0, 5))))
                : Optional.empty();
    }

    /** What a cell says in each of the orders that are left, for a sentence: '3 April 2026' as 2026-04-03. */
    public Message readings(String cell) {
        return orders.stream()
                .flatMap(order ->
                        order
                                .read(cell)
                                .map(day -> Message.of(DateColumn.class, "date.read", day, order.words()))
                                .stream())
                .reduce(DateColumn::or)
                .orElse(Message.none());
    }

    /** One of two. */
    public static Message or(Message one, Message other) {
        return Message.of(DateColumn.class, "or", one, other);
    }

    private static Optional<LocalDate> certain(String cell) {
        Matcher figures = YEAR_FIRST.matcher(cell);
        if (!figures.matches()) {
            return Optional.empty();
        }
        try {
            int[] numbers = Stream.of(1, 3, 4)
                    .mapToInt(group -> Integer.parseInt(figures.group(group)))
                    .toArray();
            return Optional.of(LocalDate.of(numbers[0], numbers[1], numbers[2]));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
