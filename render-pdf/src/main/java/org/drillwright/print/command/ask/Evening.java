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
                                new Choice("The lesson: a timed sheet for your hand", "lesson"),
                                new Choice("The wall: who works with whom, round by round", "wall"),
                                new Choice("The same as slips, one for each hand", "slips"),
                                new Choice("The hall: where the lanes lie", "hall"),
                                new Choice("The cards of this class", "cards"),
                                new Choice("All of it for a substitute", "packet")),
                        "One of two partners already knows the drill, and nobody meets whom the roster keeps apart. Once"
                                + " the wall or the slips are printed, that plan is kept.");
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
                                "These lines are added to record.csv. Was it so?",
                                "What was printed is what happened, unless you say otherwise. If it was not so, say no:"
                                        + " 'drillwright record --help' tells how to say what was.")) {
            table.run("record", "--", evening);
        }
    }

    private Form chosen() {
        return table.form("class")
                .choice("class", "Which class?", () -> classes, "Each is a file in the folder classes of your school.");
    }

    private boolean isNone() {
        if (classes.isEmpty()) {
            table.say("There is no class in this school yet. A class is a small file in its folder classes, beside a"
                    + " roster of your people; the guide 'planning a class' tells how both are written.");
        }
        return classes.isEmpty();
    }
}
