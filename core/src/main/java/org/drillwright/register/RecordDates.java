package org.drillwright.register;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.drillwright.source.Findings;
import org.drillwright.source.Span;
import org.drillwright.table.CsvLine;
import org.drillwright.table.DateColumn;
import org.drillwright.table.DateOrder;
import org.drillwright.table.Heading;
import org.drillwright.table.Repeated;
import org.drillwright.wording.Message;

/** The days of a record, and what has to be said of the way in which they are written. */
final class RecordDates {

    private final DateColumn dates;
    private final int column;
    private final Map<String, Integer> counts = new HashMap<>();
    private final Map<String, Span> first = new LinkedHashMap<>();
    private final Map<String, Optional<LocalDate>> days = new HashMap<>();
    private final Set<String> open;
    private final Set<String> counted;

    RecordDates(List<CsvLine> lines, int column, RecordAround around) {
        this.column = column;
        for (CsvLine line : lines) {
            counts.merge(line.cell(column), 1, Integer::sum);
            first.putIfAbsent(line.cell(column), line.place(column));
        }
        this.dates = DateColumn.of(first.keySet(), around.tables().dates());
        first.keySet().forEach(cell -> days.put(cell, dates.date(cell)));
        this.open = cells(dates::isOpen);
        this.counted = cells(cell -> DateColumn.counted(cell).isPresent());
    }

    /** Those of a kind, in the order in which they first stand. */
    private Set<String> cells(Predicate<String> kind) {
        return first.keySet().stream().filter(kind).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The day of a line, if it is one. */
    Optional<LocalDate> of(CsvLine line) {
        return days.getOrDefault(line.cell(column), Optional.empty());
    }

    /** The day of a line; one that is none is told of. */
    Optional<LocalDate> of(CsvLine line, Repeated repeated) {
        String cell = line.cell(column);
        Optional<LocalDate> day = of(line);
        if (day.isEmpty()) {
            repeated.add(
                    RecordRule.WRONG_WORD.id(),
                    line.place(column),
                    Message.of(RecordDates.class, "no.date", cell),
                    Message.of(RecordDates.class, "no.date.way"));
        }
        return day;
    }

    /** Whether a line's day can't be told before somebody says how it is written; that is told once for all such lines. */
    boolean isOpen(CsvLine line) {
        return open.contains(line.cell(column)) || counted.contains(line.cell(column));
    }

    private int lines(Set<String> cells) {
        return cells.stream().mapToInt(cell -> counts.getOrDefault(cell, 0)).sum();
    }

    private Span place(String cell) {
        return first.getOrDefault(cell, Span.at(0));
    }

    void report(Findings findings) {
        cells(DateOrder::isFigures).stream().findFirst().ifPresent(cell -> report(cell, findings));
        counted.stream()
                .findFirst()
                .ifPresent(cell -> findings.warning(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        Message.of(
                                        RecordDates.class,
                                        "date.counted",
                                        cell,
                                        DateColumn.counted(cell)
                                                .map(LocalDate::toString)
                                                .orElse(""))
                                .then(notCounted(lines(counted))),
                        Message.of(RecordDates.class, "date.counted.way")));
    }

    private void report(String cell, Findings findings) {
        switch (dates.state()) {
            case TAKEN ->
                findings.note(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        Message.of(
                                RecordDates.class,
                                "dates.taken",
                                dates.orders().get(0).words(),
                                cell,
                                dates.date(cell).map(LocalDate::toString).orElse("")),
                        Message.of(RecordDates.class, "dates.taken.way", wayToSay()));
            case ASKED ->
                findings.warning(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        Message.of(RecordDates.class, "date.asked", cell, dates.readings(cell))
                                .then(notCounted(lines(open))),
                        Message.of(RecordDates.class, "date.asked.way", wayToSay()));
            case MIXED ->
                findings.warning(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        Message.of(RecordDates.class, "dates.mixed").then(notCounted(lines(open))),
                        Message.of(RecordDates.class, "dates.mixed.way", wayToSay()));
            default -> {}
        }
    }

    private static Message notCounted(int lines) {
        return Message.counted(RecordDates.class, "lines.not.counted", lines);
    }

    private Message wayToSay() {
        List<DateOrder> orders =
                dates.orders().isEmpty() ? List.of(DateOrder.DAY_FIRST, DateOrder.MONTH_FIRST) : dates.orders();
        return Heading.inSchool(orders.stream()
                .map(order -> Message.plain("tables: {dates: " + order.word() + "}"))
                .reduce(DateColumn::or)
                .orElse(Message.none()));
    }
}
