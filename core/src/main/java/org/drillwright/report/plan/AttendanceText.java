package org.drillwright.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.attendance.Presence;
import org.drillwright.report.DisplayWidth;
import org.drillwright.table.SpreadsheetCell;
import org.drillwright.wording.Message;

/** Who came, for a terminal and for a spreadsheet; in the order of the roster, whoever came more. How many came is told of all. */
public final class AttendanceText {

    private AttendanceText() {}

    /** @param all whether these are all there are, so that their number is worth telling */
    public static String of(List<Presence> people, Attendance attendance, boolean all, Locale language) {
        TerminalPage page = new TerminalPage(language);
        if (attendance.held().isEmpty()) {
            return page.line(said("no.classes")).toString();
        }
        for (Presence one : people) {
            page.wrapped(one.person() + ": ", sentence(one));
        }
        if (!all) {
            return page.toString();
        }
        page.gap().line(said("by.class"));
        List<String> days = attendance.last().stream()
                .map(day -> page.said(Message.day(day)))
                .toList();
        int width = days.stream().mapToInt(DisplayWidth::of).max().orElse(0);
        for (int at = 0; at < days.size(); at++) {
            long number =
                    attendance.number(attendance.last().get(at), people.stream().map(Presence::person));
            page.line("  " + TerminalPage.padded(days.get(at), width) + "  " + number);
        }
        return page.toString();
    }

    private static Message sentence(Presence one) {
        if (one.weeks().isEmpty()) {
            return said("no.class");
        }
        List<Message> parts = new ArrayList<>();
        parts.add(one.of() == 1 ? said("came.first") : said("came", one.came(), one.of()));
        long weeks = one.weeks().get();
        if (one.came() < one.of() && weeks > 0) {
            parts.add(Message.counted(AttendanceText.class, "weeks", weeks));
        }
        if (!one.missed().isEmpty()) {
            parts.add(said("missed", Message.words(one.missed())));
        }
        return said("ended", Message.clauses(parts));
    }

    private static Message said(String key, Object... values) {
        return Message.of(AttendanceText.class, key, values);
    }

    /** A line for each person, a column for each class on record, 1 where the person came; sums in the last line. */
    public static String csv(List<Presence> people, Attendance attendance) {
        StringBuilder text = new StringBuilder();
        List<String> heading = new ArrayList<>(List.of("person"));
        List<String> sums = new ArrayList<>(List.of("people"));
        attendance.held().forEach(day -> {
            heading.add(day.toString());
            sums.add(String.valueOf(attendance.number(day, people.stream().map(Presence::person))));
        });
        text.append(SpreadsheetCell.line(heading)).append('\n');
        for (Presence one : people) {
            List<String> cells = new ArrayList<>(List.of(one.person()));
            attendance.held().forEach(day -> cells.add(attendance.came(one.person(), day) ? "1" : ""));
            text.append(SpreadsheetCell.line(cells)).append('\n');
        }
        return text.append(SpreadsheetCell.line(sums)).append('\n').toString();
    }
}
