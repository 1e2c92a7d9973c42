package org.drillwright.report.calendar;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.Locale;

/** The clocks of a zone for as long as a term lasts (RFC 5545, section 3.6.5): how they stand at first, and each change. */
final class Zone {

    private Zone() {}

    static void write(ZoneId zone, LocalDate first, LocalDate last, ContentLines content) {
        ZoneRules rules = zone.getRules();
        Instant from = first.atStartOfDay(zone).toInstant();
        Instant to = last.plusDays(2).atStartOfDay(zone).toInstant();
        content.line("BEGIN", "VTIMEZONE");
        content.line("TZID", zone.getId());
        ZoneOffset offset = rules.getOffset(from);
        clocks(rules.isDaylightSavings(from), LocalDateTime.ofInstant(from, offset), offset, offset, content);
        ZoneOffsetTransition change = rules.nextTransition(from);
        while (change != null && change.getInstant().isBefore(to)) {
            clocks(
                    rules.isDaylightSavings(change.getInstant()),
                    change.getDateTimeBefore(),
                    change.getOffsetBefore(),
                    change.getOffsetAfter(),
                    content);
            change = rules.nextTransition(change.getInstant());
        }
        content.line("END", "VTIMEZONE");
    }

    private static void clocks(
            boolean summer, LocalDateTime from, ZoneOffset before, ZoneOffset after, ContentLines content) {
        String part = summer ? "DAYLIGHT" : "STANDARD";
        content.line("BEGIN", part);
        content.line("DTSTART", TermCalendar.local(from));
        content.line("TZOFFSETFROM", offset(before));
        content.line("TZOFFSETTO", offset(after));
        content.line("END", part);
    }

    /** Hours and minutes; seconds only where there are any (section 3.3.14). */
    private static String offset(ZoneOffset offset) {
        int seconds = Math.abs(offset.getTotalSeconds());
        String sign = offset.getTotalSeconds() < 0 ? "-" : "+";
        String minutes = String.format(Locale.ROOT, "%s%02d%02d", sign, seconds / 3600, seconds / 60 % 60);
        return seconds % 60 == 0 ? minutes : minutes + String.format(Locale.ROOT, "%02d", seconds % 60);
    }
}
