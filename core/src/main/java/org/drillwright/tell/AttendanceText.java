package org.drillwright.tell;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.attendance.Attendance;
import org.drillwright.plan.attendance.Presence;
import org.drillwright.table.SpreadsheetCell;

/** Who came, for a terminal and for a spreadsheet; in the order of the roster, whoever came more. How many came is told of all. */
public final class AttendanceText {

    private AttendanceText() {}

    /** @param all whether these are all there are, so that their number is worth telling */
    public static String of(List<Presence> people, Attendance attendance, boolean all) {
        Page page = new Page();
        if (attendance.held().isEmpty()) {
            return page.line("No class is on record yet.").toString();
        }
        for (Presence one : people) {
            page.wrapped(one.person() + ": ", sentence(one));
        }
        if (!all) {
            return page.toString();
        }
        page.gap().line("People by class:");
        attendance
                .last()
                .forEach(day -> page.line("  " + day + "  "
                        + attendance.number(day, people.stream().map(Presence::person))));
        return page.toString();
    }

    private static String sentence(Presence one) {
        if (one.weeks().isEmpty()) {
            return "no class on record.";
        }
        List<String> parts = new ArrayList<>();
        parts.add(
                one.of() == 1
                        ? "came to the last class, their first on record"
                        : "came to " + one.came() + " of the last " + one.of() + " classes");
        long weeks = one.weeks().get();
        if (one.came() < one.of() && weeks > 0) {
            parts.add(Page.counted(weeks, "week") + " since their last");
        }
        if (!one.missed().isEmpty()) {
            parts.add("missed " + String.join(", ", one.missed()));
        }
        return String.join("; ", parts) + ".";
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
