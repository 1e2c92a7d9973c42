package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.command.planning.PlannedClasses;

/** One class: what is printed for it, and what is written down after it. */
final class Evening {

    private final Table table;
    private final List<Choice> classes;

    Evening(Table table) {
        this.table = table;
        this.classes = PlannedClasses.dated(table.school()).entrySet().stream()
                .map(one -> new Choice(
                        one.getKey() + one.getValue().map(day -> ", " + day).orElse(""), one.getKey()))
                .toList();
    }

    void print() {
        if (isNone()) {
            return;
        }
        Form form = chosen().choice(
                        "sheet",
                        "What do you need?",
                        () -> List.of(
                                new Choice("The lesson: a timed sheet to hold in your hand", "lesson"),
                                new Choice("The wall: who works with whom, round by round", "wall"),
                                new Choice("The same as slips, one for each person", "slips"),
                                new Choice("The hall: where the lanes go", "hall"),
                                new Choice("The cards of this class", "cards"),
                                new Choice("All of it for a substitute", "packet")),
                        "One of each pair already knows the drill, and nobody meets a person the roster keeps"
                                + " them apart from. Once the wall or the slips are printed, that plan is kept.");
        if (!form.filled()) {
            return;
        }
        String evening = form.answer("class", classes.get(0).value());
        String sheet = form.answer("sheet", "lesson");
        Path file = table.root().resolve(evening + "-" + sheet + ".pdf");
        Done done = sheet(sheet, evening, "--out=" + file);
        if (done.said().contains(file.toString())) {
            table.offer(file);
        }
    }

    private Done sheet(String sheet, String evening, String out) {
        return switch (sheet) {
            case "wall" -> table.run("pairs", out, "--", evening);
            case "slips" -> table.run("pairs", "--slips", out, "--", evening);
            case "cards" -> table.run("cards", "--class=" + evening, out);
            default -> table.run(sheet, out, "--", evening);
        };
    }

    void record() {
        if (isNone()) {
            return;
        }
        Form form = chosen();
        if (!form.filled()) {
            return;
        }
        String evening = form.answer("class", classes.get(0).value());
        if (table.run("record", "--dry-run", "--", evening).code() == 0
                && table.questions()
                        .agreed(
                                "These lines will be added to record.csv. Is this what happened?",
                                "What was printed is what happened, unless you say otherwise. If something was"
                                        + " different, answer no: 'drillwright record --help' explains how to"
                                        + " say what happened.")) {
            table.run("record", "--", evening);
        }
    }

    private Form chosen() {
        return table.form("class")
                .choice("class", "Which class?", () -> classes, "Each is a file in your school's folder 'classes'.");
    }

    private boolean isNone() {
        if (classes.isEmpty()) {
            table.say("There is no class in this school yet. A class is a small file in the folder 'classes',"
                    + " next to a roster of your people; the guide 'planning a class' explains how to write both.");
        }
        return classes.isEmpty();
    }
}
