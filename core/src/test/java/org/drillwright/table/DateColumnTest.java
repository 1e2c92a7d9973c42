package org.drillwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand, with the calendar of 2026: 1 January is a Thursday. */
class DateColumnTest {

    private static DateColumn column(String cells) {
        return DateColumn.of(Arrays.asList(cells.split(" & ")), Optional.empty());
    }

    /** The cells; what becomes of them; what the first cell says. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // Years in front are certain, whatever stands between.
                "2026-09-04 & 2026-09-11 | CERTAIN | 2026-09-04",
                "2026/9/4 & 2026-09-11 0:00 | CERTAIN | 2026-09-04",
                "2026.09.04. | CERTAIN | 2026-09-04",
                // One day alone says nothing, and a day of the week proves nothing by itself.
                "03/04/2026 | ASKED | ",
                // There is no month 17.
                "03/04/2026 & 17/04/2026 | TAKEN | 2026-04-03",
                "04/03/2026 & 04/17/2026 | TAKEN | 2026-04-03",
                "3.4.26 & 17.4.26 | TAKEN | 2026-04-03",
                "4/3/2026 0:00 & 4/17/2026 0:00 | TAKEN | 2026-04-03",
                "4/3/2026 12:00:00 AM & 4/17/2026 12:00:00 AM | TAKEN | 2026-04-03",
                // Three Fridays; month first they are a Wednesday, a Sunday, a Wednesday.
                "03/04/2026 & 10/04/2026 & 08/05/2026 | ASKED | ",
                // The same where the record has one certain Friday; two days are too few.
                "03/04/2026 & 10/04/2026 & 08/05/2026 & 2026-05-15 | TAKEN | 2026-04-03",
                "03/04/2026 & 10/04/2026 & 2026-05-15 | ASKED | ",
                // Four Fridays; month first a Wednesday, a Sunday, a Wednesday, and a Wednesday or a Saturday.
                "03/04/2026 & 10/04/2026 & 08/05/2026 & 05/06/2026 | ASKED | ",
                "03/04/2026 & 10/04/2026 & 08/05/2026 & 03/07/2026 | TAKEN | 2026-04-03",
                // Whatever the order, this one is a day in May.
                "05/05/2026 & 03/04/2026 | ASKED | 2026-05-05",
                // Both orders say the same days.
                "03/03/2026 & 05/05/2026 | TAKEN | 2026-03-03",
                // Nothing fits all: 13 January here, 13 January there.
                "13/01/2026 & 01/13/2026 | MIXED | ",
                // With hyphens two figures in front could be the year.
                "26-09-14 & 26-09-21 | ASKED | ",
                "30-09-26 & 29-10-26 | ASKED | ",
                // Words and numbers decide nothing.
                "46266 & in May | CERTAIN | "
            })
    void a_column_is_read_as_a_whole(String cells, DateColumn.State state, String first) {
        DateColumn dates = column(cells);
        assertEquals(state, dates.state());
        assertEquals(Optional.ofNullable(first).map(LocalDate::parse), dates.date(cells.split(" & ")[0]));
    }

    /** Three Fridays and one that is certain; then certain days on which they would fall month first. */
    @Test
    void what_was_decided_stays_so_when_classes_on_new_days_are_recorded() {
        DateColumn later =
                column("03/04/2026 & 10/04/2026 & 08/05/2026 & 2026-05-15 & 2026-05-17 & 2026-05-20 & 2026-05-24");
        assertEquals(DateColumn.State.TAKEN, later.state());
        assertEquals(Optional.of(LocalDate.of(2026, 4, 3)), later.date("03/04/2026"));
    }

    /**
     * Columns drawn by chance, of classes on one, two or three days of the week, some written with the year first: whatever
     * is written below, in either way, what was decided stays, unless it is no day.
     */
    @Test
    void what_was_decided_never_moves() {
        Random chance = new Random(9);
        int taken = 0;
        for (int at = 0; at < 4_000; at++) {
            LocalDate start = LocalDate.of(2026, 1, 1).plusDays(chance.nextInt(300));
            int[] weekdays = {0, chance.nextInt(7), chance.nextInt(7)};
            List<String> cells = new ArrayList<>();
            for (int cell = 3 + chance.nextInt(8); cell > 0; cell--) {
                LocalDate day = start.plusWeeks(chance.nextInt(20)).plusDays(weekdays[chance.nextInt(3)]);
                cells.add(
                        chance.nextInt(4) == 0
                                ? day.toString()
                                : DateTimeFormatter.ofPattern("dd/MM/yyyy").format(day));
            }
            Optional<DateColumn> before = Optional.empty();
            for (int first = 1; first <= cells.size(); first++) {
                DateColumn now = DateColumn.of(cells.subList(0, first), Optional.empty());
                if (before.isPresent() && isDay(before.get(), cells.get(first - 1))) {
                    for (String cell : cells.subList(0, first - 1)) {
                        Optional<LocalDate> was = before.get().date(cell);
                        taken += was.isPresent() ? 1 : 0;
                        assertEquals(was, was.isPresent() ? now.date(cell) : was, () -> cell + " of " + cells);
                    }
                }
                before = Optional.of(now);
            }
        }
        assertTrue(taken > 2_000, "only " + taken + " were decided");
    }

    /** Whether a cell is a day in the order that was taken, if one was. */
    private static boolean isDay(DateColumn column, String cell) {
        return column.state() != DateColumn.State.TAKEN || column.date(cell).isPresent();
    }

    @Test
    void what_the_settings_say_holds_and_what_is_no_day_then_is_none() {
        DateColumn dates = DateColumn.of(List.of("03/04/2026", "01/13/2026"), Optional.of(DateOrder.DAY_FIRST));
        assertEquals(Optional.of(LocalDate.of(2026, 4, 3)), dates.date("03/04/2026"));
        assertEquals(Optional.empty(), dates.date("01/13/2026"));
    }

    /** Day 0 of the usual count is 1899-12-30; 46266 is 2026-09-01 (46023 is 2026-01-01, and 243 days later). */
    @Test
    void a_number_of_days_is_shown_and_never_taken() {
        assertEquals(Optional.of(LocalDate.of(2026, 9, 1)), DateColumn.counted("46266"));
        assertEquals(Optional.empty(), column("46266").date("46266"));
    }

    /** Weekly classes on one day, now and then one missing, in one of six ways of writing. */
    @Test
    void of_two_thousand_columns_none_is_read_wrongly_and_few_are_asked() {
        Random chance = new Random(4);
        String[] ways = {"dd/MM/yyyy", "M/d/yyyy", "d.M.yy", "MM/dd/yy", "dd-MM-yyyy", "yyyy-MM-dd"};
        int asked = 0;
        for (int at = 0; at < 2_000; at++) {
            LocalDate start = LocalDate.of(2024, 1, 1).plusDays(chance.nextInt(1_000));
            List<LocalDate> days = new ArrayList<>(List.of(start));
            for (int week = 1; week < 2 + chance.nextInt(14); week++) {
                if (chance.nextInt(5) > 0) {
                    days.add(start.plusWeeks(week));
                }
            }
            DateTimeFormatter way = DateTimeFormatter.ofPattern(ways[chance.nextInt(ways.length)]);
            DateColumn dates = DateColumn.of(days.stream().map(way::format).toList(), Optional.empty());
            for (LocalDate day : days) {
                Optional<LocalDate> read = dates.date(way.format(day));
                assertEquals(day, read.orElse(day), () -> days + " as " + way);
            }
            asked += dates.state() == DateColumn.State.ASKED ? 1 : 0;
        }
        // The prototype asked of 33; here also each column of a single day.
        assertTrue(asked < 120, "asked of " + asked);
    }
}
