package org.drillwright.table;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
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
        /** One order was taken, for only in this one all are days, or the column's days of the week decide. */
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

    /** Different days that are needed before they decide by falling on days of the week that are certain. */
    private static final int ENOUGH = 3;

    /** Different days that are needed before they decide by falling on one and the same day of the week. */
    private static final int REGULAR = 4;

    /** Days of the week on which the same cells fall in an order that is then left: more than most schools have classes on. */
    private static final int SCATTERED = 3;

    private final State state;
    private final List<DateOrder> orders;

    private DateColumn(State state, List<DateOrder> orders) {
        this.state = state;
        this.orders = orders;
    }

    /**
     * Looks at all cells of a column, and at nothing else: whatever classes there are, it says the same.
     *
     * @param column in the order in which they stand
     * @param told the order that the school's settings name
     */
    public static DateColumn of(Collection<String> column, Optional<DateOrder> told) {
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
        return decided(possible, column)
                .map(order -> new DateColumn(State.TAKEN, List.of(order)))
                .orElseGet(() -> new DateColumn(State.ASKED, possible));
    }

    /**
     * The order by days of the week, if they decide: cell by cell from the top, until they do. So what was decided stays,
     * whatever is written below.
     */
    private static Optional<DateOrder> decided(List<DateOrder> possible, Collection<String> column) {
        Map<DateOrder, Set<LocalDate>> days = new EnumMap<>(DateOrder.class);
        Set<DayOfWeek> certain = EnumSet.noneOf(DayOfWeek.class);
        for (String cell : column) {
            certain(cell).map(LocalDate::getDayOfWeek).ifPresent(certain::add);
            possible.forEach(order -> order.read(cell)
                    .ifPresent(day ->
                            days.computeIfAbsent(order, none -> new HashSet<>()).add(day)));
            List<DateOrder> fitting = possible.stream()
                    .filter(order -> isOn(certain, days.getOrDefault(order, Set.of())) || isRegular(order, days))
                    .toList();
            if (fitting.size() == 1) {
                return Optional.of(fitting.get(0));
            }
        }
        return Optional.empty();
    }

    private static boolean isOn(Set<DayOfWeek> certain, Set<LocalDate> days) {
        return days.size() >= ENOUGH && certain.containsAll(weekdays(days));
    }

    /** Whether days fall on one day of the week in an order, and in all others on many. */
    private static boolean isRegular(DateOrder order, Map<DateOrder, Set<LocalDate>> days) {
        Set<LocalDate> these = days.getOrDefault(order, Set.of());
        return these.size() >= REGULAR
                && weekdays(these).size() == 1
                && days.entrySet().stream()
                        .allMatch(other -> other.getKey() == order
                                || weekdays(other.getValue()).size() >= SCATTERED);
    }

    private static Set<DayOfWeek> weekdays(Set<LocalDate> days) {
        return days.stream().map(LocalDate::getDayOfWeek).collect(Collectors.toSet());
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

    public State state() {
        return state;
    }

    /** The orders that are left; one where it is known. */
    public List<DateOrder> orders() {
        return orders;
    }

    /** The day that a cell says; nothing if it is none, or if that is still to be asked. */
    public Optional<LocalDate> date(String cell) {
        return certain(cell).or(() -> {
            List<Optional<LocalDate>> said =
                    orders.stream().map(order -> order.read(cell)).distinct().toList();
            return said.size() == 1 ? said.get(0) : Optional.empty();
        });
    }

    /** Whether a cell is a day, only in which order is not known. */
    public boolean isOpen(String cell) {
        return (state == State.ASKED || state == State.MIXED)
                && DateOrder.isFigures(cell)
                && date(cell).isEmpty();
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
