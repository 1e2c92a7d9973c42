package org.drillwright.record;

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
import org.drillwright.table.Repeated;

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
        this.dates = DateColumn.of(first.keySet(), around.tables().dates(), around.classes());
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
                    "'" + cell + "' is not a date.",
                    "Write year, month and day in figures, such as 2026-09-01. The line wasn't counted.");
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
                        "'" + cell + "' may be "
                                + DateColumn.counted(cell)
                                        .map(LocalDate::toString)
                                        .orElse("") + ", but spreadsheets count days in two ways. "
                                + notCounted(lines(counted)),
                        "Format the column as a date in the spreadsheet, preferably as 2026-09-01, and save the"
                                + " table again."));
    }

    private void report(String cell, Findings findings) {
        switch (dates.state()) {
            case TAKEN ->
                findings.note(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        "The dates were read " + dates.orders().get(0).words() + ": '" + cell + "' as "
                                + dates.date(cell).map(LocalDate::toString).orElse("") + ".",
                        "Settle it once and for all: " + wayToSay() + ".");
            case ASKED ->
                findings.warning(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        "'" + cell + "' could be " + dates.readings(cell) + ". " + notCounted(lines(open)),
                        "Say which: " + wayToSay() + ".");
            case MIXED ->
                findings.warning(
                        RecordRule.WRONG_WORD.id(),
                        place(cell),
                        "No single order of day and month fits all these dates. " + notCounted(lines(open)),
                        "Write the year first in all of them, such as 2026-09-01, or say how most are written: "
                                + wayToSay() + ".");
            default -> {}
        }
    }

    private static String notCounted(int lines) {
        return lines == 1 ? "This line wasn't counted." : "None of these " + lines + " lines was counted.";
    }

    private String wayToSay() {
        List<DateOrder> orders =
                dates.orders().isEmpty() ? List.of(DateOrder.DAY_FIRST, DateOrder.MONTH_FIRST) : dates.orders();
        return orders.stream()
                        .map(order -> "tables: {dates: " + order.word() + "}")
                        .collect(Collectors.joining(" or "))
                + " in school.yaml";
    }
}
