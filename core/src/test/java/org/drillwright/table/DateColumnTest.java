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

    /** Classes on Fridays. */
    private static final List<LocalDate> FRIDAYS = List.of(LocalDate.of(2026, 9, 4));

    private static DateColumn column(String cells, List<LocalDate> classes) {
        return DateColumn.of(Arrays.asList(cells.split(" & ")), Optional.empty(), () -> classes);
    }

    /** The cells; what is known of the classes; what becomes of it; what the first cell says. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // Years in front are certain, whatever stands between.
                "2026-09-04 & 2026-09-11 | none | CERTAIN | 2026-09-04",
                "2026/9/4 & 2026-09-11 0:00 | none | CERTAIN | 2026-09-04",
                "2026.09.04. | none | CERTAIN | 2026-09-04",
                // One day alone says nothing, and a day of the week proves nothing by itself.
                "03/04/2026 | none | ASKED | ",
                "03/04/2026 | fridays | ASKED | ",
                // There is no month 17.
                "03/04/2026 & 17/04/2026 | none | TAKEN | 2026-04-03",
                "04/03/2026 & 04/17/2026 | none | TAKEN | 2026-04-03",
                "3.4.26 & 17.4.26 | none | TAKEN | 2026-04-03",
                "4/3/2026 0:00 & 4/17/2026 0:00 | none | TAKEN | 2026-04-03",
                "4/3/2026 12:00:00 AM & 4/17/2026 12:00:00 AM | none | TAKEN | 2026-04-03",
                // Three Fridays; month first they are a Wednesday, a Sunday, a Wednesday.
                "03/04/2026 & 10/04/2026 & 08/05/2026 | fridays | TAKEN | 2026-04-03",
                "03/04/2026 & 10/04/2026 & 08/05/2026 | none | ASKED | ",
                // The same where the record has one certain Friday.
                "03/04/2026 & 10/04/2026 & 08/05/2026 & 2026-05-15 | none | TAKEN | 2026-04-03",
                // Both orders say the same days.
                "03/03/2026 & 05/05/2026 | none | TAKEN | 2026-03-03",
                // Nothing fits all: 13 January here, 13 January there.
                "13/01/2026 & 01/13/2026 | none | MIXED | ",
                // With hyphens two figures in front could be the year.
                "26-09-14 & 26-09-21 | none | ASKED | ",
                "30-09-26 & 29-10-26 | none | ASKED | ",
                // Words and numbers decide nothing.
                "46266 & in May | none | CERTAIN | "
            })
    void a_column_is_read_as_a_whole(String cells, String classes, DateColumn.State state, String first) {
        DateColumn dates = column(cells, classes.equals("fridays") ? FRIDAYS : List.of());
        assertEquals(state, dates.state());
        assertEquals(Optional.ofNullable(first).map(LocalDate::parse), dates.date(cells.split(" & ")[0]));
    }

    /**
     * As above, three Fridays; month first they end on 5 August. Classes on Wednesday and Sunday that are planned for later
     * leave it as the Fridays up to then decided; classes on all these days at once decide nothing.
     */
    @Test
    void what_was_decided_stays_so_when_classes_on_new_days_are_planned() {
        String cells = "03/04/2026 & 10/04/2026 & 08/05/2026";
        LocalDate friday = LocalDate.of(2026, 5, 15);
        LocalDate wednesday = LocalDate.of(2026, 12, 2);
        LocalDate sunday = LocalDate.of(2026, 12, 6);
        DateColumn later = column(cells, List.of(sunday, friday, wednesday));
        assertEquals(DateColumn.State.TAKEN, later.state());
        assertEquals(Optional.of(LocalDate.of(2026, 4, 3)), later.date("03/04/2026"));
        assertEquals(
                DateColumn.State.ASKED,
                column(cells, List.of(friday, friday.minusDays(2), friday.minusDays(5)))
                        .state());
    }

    /**
     * Where all classes are later than the column the week of the next one decides, and it stays so: Fridays from 15 May on,
     * then Wednesdays and Sundays, some before 5 August, on which the column would end month first.
     */
    @Test
    void what_only_later_classes_decided_no_later_ones_open_again() {
        String cells = "03/04/2026 & 10/04/2026 & 08/05/2026";
        LocalDate friday = LocalDate.of(2026, 5, 15);
        List<LocalDate> planned = new ArrayList<>(List.of(friday));
        for (int week = 1; week < 40; week++) {
            planned.add(friday.plusDays(7L * week - 2));
            planned.add(friday.plusDays(7L * week + 2));
            DateColumn later = column(cells, planned);
            assertEquals(DateColumn.State.TAKEN, later.state());
            assertEquals(Optional.of(LocalDate.of(2026, 4, 3)), later.date("03/04/2026"));
        }
    }

    /** Columns and classes drawn by chance: classes behind the column, a week after all known, change nothing that was decided. */
    @Test
    void what_was_never_moves() {
        Random chance = new Random(9);
        int taken = 0;
        for (int at = 0; at < 2_000; at++) {
            LocalDate start = LocalDate.of(2026, 1, 1).plusDays(chance.nextInt(300));
            List<String> cells = new ArrayList<>();
            List<LocalDate> classes = new ArrayList<>();
            for (int cell = 2 + chance.nextInt(4); cell > 0; cell--) {
                cells.add(DateTimeFormatter.ofPattern("dd/MM/yyyy").format(start.plusWeeks(chance.nextInt(12))));
            }
            for (int known = 1 + chance.nextInt(5); known > 0; known--) {
                classes.add(start.plusDays(chance.nextInt(200) - 20));
            }
            DateColumn before = DateColumn.of(cells, Optional.empty(), () -> classes);
            LocalDate last = classes.stream().max(LocalDate::compareTo).orElseThrow();
            LocalDate later = last.plusWeeks(1).isAfter(start.plusWeeks(12)) ? last.plusWeeks(1) : start.plusWeeks(12);
            List<LocalDate> more = new ArrayList<>(classes);
            for (int added = 8; added > 0; added--) {
                more.add(later.plusDays(chance.nextInt(60)));
            }
            if (before.state() == DateColumn.State.TAKEN) {
                taken++;
                assertEquals(
                        before.orders(),
                        DateColumn.of(cells, Optional.empty(), () -> more).orders());
            }
        }
        assertTrue(taken > 200, "only " + taken + " were decided");
    }

    @Test
    void what_the_settings_say_holds_and_what_is_no_day_then_is_none() {
        DateColumn dates =
                DateColumn.of(List.of("03/04/2026", "01/13/2026"), Optional.of(DateOrder.DAY_FIRST), List::of);
        assertEquals(Optional.of(LocalDate.of(2026, 4, 3)), dates.date("03/04/2026"));
        assertEquals(Optional.empty(), dates.date("01/13/2026"));
    }

    /** Day 0 of the usual count is 1899-12-30; 46266 is 2026-09-01 (46023 is 2026-01-01, and 243 days later). */
    @Test
    void a_number_of_days_is_shown_and_never_taken() {
        assertEquals(Optional.of(LocalDate.of(2026, 9, 1)), DateColumn.counted("46266"));
        assertEquals(Optional.empty(), column("46266", FRIDAYS).date("46266"));
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
            DateColumn dates = DateColumn.of(
                    days.stream().map(way::format).toList(), Optional.empty(), () -> List.of(start.minusWeeks(3)));
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
