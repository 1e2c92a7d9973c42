package org.drillwright.report.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.plan.published.GroupCells;
import org.drillwright.plan.published.Publication;
import org.drillwright.plan.published.PublishedClass;
import org.drillwright.plan.published.PublishedTerm;
import org.drillwright.wording.Message;

/**
 * The published plans of a term as an iCalendar file (RFC 5545): an event for each class, and one for the exam. The same
 * plans give the same bytes: each time in it is that at which a plan was published.
 *
 * <p>Written here and not by a library: the one that is kept up, ical4j 4.4.0, weighs 3.1 MB with what it needs, which is
 * out of proportion to these lines; it reads them back in the tests.
 */
public final class TermCalendar {

    private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;
    private static final DateTimeFormatter LOCAL = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT);
    private static final DateTimeFormatter UTC =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    /** In the place of a class's key for the exam; no file can hold it. */
    private static final String EXAM = "\nexam";

    private final List<Publication> line;
    private final PublishedTerm now;
    private final String school;
    private final UnaryOperator<String> title;
    private final Locale language;
    private final ContentLines content = new ContentLines();

    private TermCalendar(List<Publication> line, String school, UnaryOperator<String> title, Locale language) {
        this.line = List.copyOf(line);
        this.now = line.get(line.size() - 1).term();
        this.school = school;
        this.title = title;
        this.language = language;
    }

    /**
     * The file's text.
     *
     * @param line the plans up to the one that holds, the first first; one of them at least has a class (section 3.6)
     * @param school its name, by which its events differ from those of other schools
     * @param title what a drill is called, by its id
     * @param language in which it is told
     */
    public static String of(List<Publication> line, String school, UnaryOperator<String> title, Locale language) {
        return new TermCalendar(line, school, title, language).written();
    }

    /** No METHOD (section 3.7.2): this is a file that shows classes, and no invitation. */
    private String written() {
        content.line("BEGIN", "VCALENDAR");
        content.line("VERSION", "2.0");
        content.line(
                "PRODID",
                "-//Drillwright//Drillwright//" + language.getLanguage().toUpperCase(Locale.ROOT));
        content.line("CALSCALE", "GREGORIAN");
        now.zone().filter(zone -> isTimed()).ifPresent(zone -> Zone.write(zone, first(), last(), content));
        for (String key : keys()) {
            EventHistory.of(line, plan -> plan.term().of(key).map(one -> event(plan.term(), one)))
                    .ifPresent(story -> event(key, story));
        }
        EventHistory.of(line, plan -> plan.term().exam().map(day -> exam(plan.term(), day)))
                .ifPresent(story -> event(EXAM, story));
        content.line("END", "VCALENDAR");
        return content.toString();
    }

    /** Of all plans, in the order of their classes. */
    private Set<String> keys() {
        Set<String> keys = new LinkedHashSet<>();
        line.forEach(plan -> plan.term().classes().forEach(one -> keys.add(one.key())));
        return keys;
    }

    private boolean isTimed() {
        return classes().anyMatch(one -> one.begins().isPresent());
    }

    private Stream<PublishedClass> classes() {
        return line.stream().flatMap(plan -> plan.term().classes().stream());
    }

    private LocalDate first() {
        return classes().map(PublishedClass::date).min(LocalDate::compareTo).orElseThrow();
    }

    private LocalDate last() {
        return classes().map(PublishedClass::date).max(LocalDate::compareTo).orElseThrow();
    }

    private static String called(PublishedTerm term) {
        return term.title().isEmpty() ? term.named() : term.title();
    }

    private CalendarEvent event(PublishedTerm term, PublishedClass one) {
        return new CalendarEvent(
                one.date(),
                one.begins(),
                one.minutes(),
                term.zone().map(ZoneId::getId).orElse(""),
                term.place(),
                said("class", called(term)),
                one.groups().stream()
                        .map(cells -> described(cells, one.groups().size() > 1))
                        .collect(Collectors.joining("\n")));
    }

    private String described(GroupCells cells, boolean named) {
        String drills = Stream.of(drills("new", cells.asNew()), drills("again", cells.again()))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining("\n"));
        return named ? cells.group() + "\n" + drills : drills;
    }

    private String drills(String how, List<String> drills) {
        return drills.isEmpty() ? "" : said(how, drills.stream().map(title).collect(Collectors.joining("; ")));
    }

    private String said(String key, Object... values) {
        return Message.of(TermCalendar.class, key, values).in(language);
    }

    private CalendarEvent exam(PublishedTerm term, LocalDate day) {
        return new CalendarEvent(day, Optional.empty(), 0, "", term.place(), said("exam", called(term)), "");
    }

    private void event(String key, EventHistory story) {
        CalendarEvent event = story.last();
        content.line("BEGIN", "VEVENT");
        content.line("UID", uid(key));
        content.line("DTSTAMP", UTC.format(story.changed()));
        content.line("LAST-MODIFIED", UTC.format(story.changed()));
        content.line("SEQUENCE", String.valueOf(story.sequence()));
        times(event);
        content.text("SUMMARY", event.summary());
        if (!event.described().isEmpty()) {
            content.text("DESCRIPTION", event.described());
        }
        if (!event.place().isEmpty()) {
            content.text("LOCATION", event.place());
        }
        content.text("CATEGORIES", said(key.equals(EXAM) ? "category.exam" : "category.class"));
        content.line("STATUS", story.cancelled() ? "CANCELLED" : "CONFIRMED");
        content.line("END", "VEVENT");
    }

    /**
     * A whole day is a date (section 3.3.4), whose end is the day behind it. A time without a zone is the same on every
     * clock, wherever it is read (section 3.3.5, form 1); one with a zone names it (form 3).
     */
    private void times(CalendarEvent event) {
        if (event.begins().isEmpty()) {
            content.line("DTSTART;VALUE=DATE", DATE.format(event.date()));
            content.line("DTEND;VALUE=DATE", DATE.format(event.date().plusDays(1)));
            return;
        }
        LocalTime begins = event.begins().get();
        LocalDateTime start = event.date().atTime(begins);
        LocalDateTime end = end(start, event);
        String zone = event.zone().isEmpty() ? "" : ";TZID=" + event.zone();
        content.line("DTSTART" + zone, LOCAL.format(start));
        content.line("DTEND" + zone, LOCAL.format(end));
    }

    /** In minutes that really pass, should the clocks be changed in a class. */
    private static LocalDateTime end(LocalDateTime start, CalendarEvent event) {
        Duration length = Duration.ofMinutes(event.minutes());
        return event.zone().isEmpty()
                ? start.plus(length)
                : start.atZone(ZoneId.of(event.zone())).plus(length).toLocalDateTime();
    }

    /** Unique for good (section 3.8.4.7), and the same in each file of this term, wherever it was written. */
    private String uid(String key) {
        String name = school + "\n" + now.named() + "\n" + key;
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }

    static String local(LocalDateTime time) {
        return LOCAL.format(time);
    }
}
