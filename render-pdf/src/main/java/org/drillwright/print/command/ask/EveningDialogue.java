package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.command.planning.PlannedClasses;
import org.drillwright.wording.Message;

/** One class: what is printed for it, and what is written down after it. */
final class EveningDialogue {

    private final DialogueContext table;
    private final List<AnswerOption> classes;

    EveningDialogue(DialogueContext table) {
        this.table = table;
        this.classes = PlannedClasses.dated(table.school()).entrySet().stream()
                .map(one -> AnswerOption.plain(
                        one.getKey() + one.getValue().map(day -> ", " + day).orElse(""), one.getKey()))
                .toList();
    }

    void print() {
        if (isNone()) {
            return;
        }
        Questionnaire form = chosen().choice(
                        "sheet",
                        Message.of(EveningDialogue.class, "evening.what.do.you.need"),
                        () -> List.of(
                                new AnswerOption(
                                        Message.of(EveningDialogue.class, "evening.the.lesson.a.timed"), "lesson"),
                                new AnswerOption(
                                        Message.of(EveningDialogue.class, "evening.the.wall.who.works"), "wall"),
                                new AnswerOption(
                                        Message.of(EveningDialogue.class, "evening.the.same.as.slips"), "slips"),
                                new AnswerOption(
                                        Message.of(EveningDialogue.class, "evening.the.hall.where.the"), "hall"),
                                new AnswerOption(
                                        Message.of(EveningDialogue.class, "evening.the.cards.of.this"), "cards"),
                                new AnswerOption(Message.of(EveningDialogue.class, "evening.all.of.it.for"), "packet")),
                        Message.of(EveningDialogue.class, "evening.one.of.each.pair"));
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
        Questionnaire form = chosen();
        if (!form.filled()) {
            return;
        }
        String evening = form.answer("class", classes.get(0).value());
        if (table.run("record", "--dry-run", "--", evening).code() == 0
                && table.questions()
                        .agreed(
                                Message.of(EveningDialogue.class, "evening.these.lines.will.be"),
                                Message.of(EveningDialogue.class, "evening.what.was.printed.is"))) {
            table.run("record", "--", evening);
        }
    }

    private Questionnaire chosen() {
        return table.form("class")
                .choice(
                        "class",
                        Message.of(EveningDialogue.class, "evening.which.class"),
                        () -> classes,
                        Message.of(EveningDialogue.class, "evening.each.is.a.file"));
    }

    private boolean isNone() {
        if (classes.isEmpty()) {
            table.say(Message.of(EveningDialogue.class, "evening.there.is.no.class"));
        }
        return classes.isEmpty();
    }
}
