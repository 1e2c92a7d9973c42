package org.drillwright.report.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStart;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.Publication;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** RFC 5545, put to a reader of somebody else's: ical4j. */
class TermCalendarTest {

    private static final Optional<ZoneId> LONDON = Optional.of(ZoneId.of("Europe/London"));

    private static PublishedClass at(String key, String date, String... drills) {
        return new PublishedClass(
                key,
                LocalDate.parse(date),
                Optional.of(LocalTime.of(19, 0)),
                75,
                List.of(new GroupCells("all", List.of(drills), List.of())));
    }

    private static Publication plan(int day, Optional<ZoneId> zone, PublishedClass... classes) {
        PublishedTerm term = new PublishedTerm(
                "t",
                Optional.empty(),
                "Spring",
                "Hall",
                zone,
                Optional.of(LocalDate.of(2027, 4, 30)),
                List.of(classes));
        return new Publication(term.mark(PlanMark.SHORT), Instant.parse("2027-01-0" + day + "T12:00:00Z"), term);
    }

    private static String file(Publication... line) {
        return TermCalendar.of(List.of(line), "Larkspur", drill -> drill, Locale.ENGLISH);
    }

    private static List<VEvent> read(String file) {
        try {
            Calendar calendar = new CalendarBuilder().build(new StringReader(file));
            assertFalse(
                    calendar.validate().hasErrors(),
                    () -> calendar.validate().getEntries().toString());
            return calendar.getComponents("VEVENT");
        } catch (IOException | ParserException problem) {
            throw new AssertionError(file, problem);
        }
    }

    private static String value(VEvent event, String property) {
        return event.<Property>getProperty(property).map(Property::getValue).orElse("");
    }

    /** The clocks of London are an hour before those of Greenwich from 28 March 2027 on, the last Sunday of the month. */
    @Test
    void times_are_those_of_the_zone() {
        List<VEvent> events = read(file(plan(1, LONDON, at("c1", "2027-03-24", "a"), at("c2", "2027-03-31", "b"))));
        List<Instant> starts = new ArrayList<>();
        for (VEvent event : events.subList(0, 2)) {
            Temporal start = event.<DtStart<Temporal>>getProperty(Property.DTSTART)
                    .orElseThrow()
                    .getDate();
            starts.add(ZonedDateTime.from(start).toInstant());
        }
        assertEquals(List.of(Instant.parse("2027-03-24T19:00:00Z"), Instant.parse("2027-03-31T18:00:00Z")), starts);
        assertEquals("20270331T201500", value(events.get(1), Property.DTEND));
        assertEquals("20270430", value(events.get(2), Property.DTSTART), "the exam, a whole day");
        assertEquals("20270501", value(events.get(2), Property.DTEND), "up to the day behind it");
    }

    /** Section 3.3.5: form 1 is the same on every clock; no zone is written down. */
    @Test
    void without_a_zone_times_are_local() {
        String file = file(plan(1, Optional.empty(), at("c1", "2027-03-24", "a")));
        assertTrue(file.contains("\r\nDTSTART:20270324T190000\r\n"), file);
        assertFalse(file.contains("VTIMEZONE"), file);
        assertEquals(2, read(file).size());
    }

    /** By hand: moved in two later plans, dropped in the fourth, and one that nothing was changed of. */
    @Test
    void what_is_moved_keeps_its_name_and_what_is_dropped_stays_as_cancelled() {
        List<VEvent> events = read(file(
                plan(1, LONDON, at("c1", "2027-02-03", "a"), at("c2", "2027-02-10", "b"), at("c3", "2027-02-17", "c")),
                plan(2, LONDON, at("c1", "2027-02-03", "a"), at("c2", "2027-02-11", "b"), at("c3", "2027-02-17", "c")),
                plan(3, LONDON, at("c1", "2027-02-03", "a"), at("c2", "2027-02-12", "b"), at("c3", "2027-02-17", "c")),
                plan(4, LONDON, at("c1", "2027-02-03", "a"), at("c2", "2027-02-12", "b"))));
        assertEquals(4, events.size(), "each class once, and the exam");
        assertEquals(
                List.of("0", "2", "1", "0"),
                events.stream().map(one -> value(one, Property.SEQUENCE)).toList());
        assertEquals(
                List.of("CONFIRMED", "CONFIRMED", "CANCELLED", "CONFIRMED"),
                events.stream().map(one -> value(one, Property.STATUS)).toList());
        assertEquals("20270212T190000", value(events.get(1), Property.DTSTART));
        assertEquals("20270217T190000", value(events.get(2), Property.DTSTART));
        assertEquals(
                List.of("20270101T120000Z", "20270103T120000Z", "20270104T120000Z", "20270101T120000Z"),
                events.stream().map(one -> value(one, Property.LAST_MODIFIED)).toList());
        String first = file(
                plan(1, LONDON, at("c1", "2027-02-03", "a"), at("c2", "2027-02-10", "b"), at("c3", "2027-02-17", "c")));
        assertEquals(uids(read(first)), uids(events), "the same names in each file");
        assertEquals(4, new HashSet<>(uids(events)).size());
    }

    private static List<String> uids(List<VEvent> events) {
        return events.stream().map(event -> value(event, Property.UID)).toList();
    }

    /** Each thing by which a plan changes an event, and one by which it doesn't. */
    @ParameterizedTest(name = "{0} {1} {2} {3}: {4}")
    @CsvSource({
        "c1, 2027-02-04, 19:00, a, 1",
        "c1, 2027-02-03, 19:30, a, 1",
        "c1, 2027-02-03, 19:00, b, 1",
        "c1, 2027-02-03, 19:00, a, 0"
    })
    void a_change_of_day_time_or_drills_counts_once(String key, String date, String time, String drill, String times) {
        PublishedClass now = new PublishedClass(
                key,
                LocalDate.parse(date),
                Optional.of(LocalTime.parse(time)),
                75,
                List.of(new GroupCells("all", List.of(drill), List.of())));
        List<VEvent> events = read(file(plan(1, LONDON, at("c1", "2027-02-03", "a")), plan(2, LONDON, now)));
        assertEquals(times, value(events.get(0), Property.SEQUENCE));
    }

    /** Sections 3.1 and 3.3.11. */
    @Test
    void lines_are_short_and_texts_come_back_as_they_were() {
        String odd = "Épée, \"doublé\"; back\\slash – " + "é".repeat(90) + " and a 🤺".repeat(20);
        PublishedTerm term = new PublishedTerm(
                "t", Optional.empty(), odd, odd, LONDON, Optional.empty(), List.of(at("c1", "2027-02-03", odd)));
        String file = file(new Publication(term.mark(PlanMark.SHORT), Instant.EPOCH, term));
        assertTrue(file.endsWith("END:VCALENDAR\r\n"));
        for (String line : file.split("\r\n")) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, line);
            assertFalse(line.contains("\n") || line.contains("\r"), line);
        }
        VEvent event = read(file).get(0);
        assertEquals(odd, value(event, Property.LOCATION));
        assertEquals("Class, " + odd, value(event, Property.SUMMARY));
        assertEquals("New: " + odd, value(event, Property.DESCRIPTION));
    }

    @Test
    void the_same_plans_give_the_same_bytes_and_another_school_other_names() {
        Publication plan = plan(1, LONDON, at("c1", "2027-02-03", "a"));
        assertEquals(file(plan), file(plan));
        Set<String> both = new HashSet<>(uids(read(file(plan))));
        both.addAll(uids(read(TermCalendar.of(List.of(plan), "Other", drill -> drill, Locale.ENGLISH))));
        assertEquals(4, both.size());
    }

    @Test
    void it_names_nobody_and_asks_for_no_answer() {
        String file = file(plan(1, LONDON, at("c1", "2027-02-03", "a")));
        for (String property : List.of("METHOD", "ATTENDEE", "ORGANIZER")) {
            assertFalse(file.contains("\n" + property), property);
        }
    }
}
