package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Level;
import org.drillwright.print.command.folder.Settings;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;
import org.drillwright.wording.Message;

/** Drills that are written, changed, checked and shown. */
final class Drills {

    static final Message HOW_TO_CHOOSE = Message.of(Drills.class, "drills.type.its.number.or");

    private static final String LATER = "";

    private final DialogueContext table;

    Drills(DialogueContext table) {
        this.table = table;
    }

    void write() {
        Questionnaire form = table.form("write")
                .text(
                        "title",
                        Message.of(Drills.class, "drills.what.is.the.drill"),
                        Message.of(Drills.class, "drills.the.title.appears.on"))
                .choice(
                        "level",
                        Message.of(Drills.class, "drills.who.is.it.for"),
                        this::levels,
                        Message.of(Drills.class, "drills.the.levels.are.those"))
                .choice(
                        "form",
                        Message.of(Drills.class, "drills.who.is.in.it"),
                        () -> List.of(
                                new AnswerOption(Message.of(Drills.class, "drills.two.partners.a.leader"), "partner"),
                                new AnswerOption(Message.of(Drills.class, "drills.a.class.following.a"), "solo")),
                        Message.of(Drills.class, "drills.in.a.partner.drill"));
        if (!form.filled()) {
            return;
        }
        List<String> arguments = new ArrayList<>();
        if (!form.answer("level", "").isEmpty()) {
            arguments.add("--level=" + form.answer("level", ""));
        }
        if (form.answer("form", "partner").equals("solo")) {
            arguments.add("--solo");
        }
        arguments.addAll(List.of("--", form.answer("title", "")));
        Done done = table.run("new", arguments);
        String file = table.written(done);
        if (!file.isEmpty()) {
            table.say(Message.of(Drills.class, "drills.it.is.complete.as"));
            open(Path.of(file));
        }
    }

    private List<AnswerOption> levels() {
        return Settings.of(table.root()).stream()
                .flatMap(school -> school.levels().stream())
                .map(Level::name)
                .map(name -> AnswerOption.plain(name, name))
                .toList();
    }

    void change() {
        Questionnaire form = chosen(Message.of(Drills.class, "drills.which.drill"));
        if (form.filled()) {
            open(file(form.answer("drill", "")));
        }
    }

    /** The file in an editor, the page in a browser. */
    private void open(Path file) {
        String wish = table.questions()
                .choice(
                        Message.of(Drills.class, "drills.open.it"),
                        List.of(
                                new AnswerOption(Message.of(Drills.class, "drills.yes.with.a.page"), "page"),
                                new AnswerOption(Message.of(Drills.class, "drills.only.the.file"), "file"),
                                new AnswerOption(Message.of(Drills.class, "drills.not.now"), LATER)),
                        Optional.of("page"),
                        Message.of(Drills.class, "drills.the.file.opens.in"))
                .value();
        if (wish.equals(LATER)) {
            return;
        }
        table.edit(file);
        if (wish.equals("page")) {
            table.run("watch", "--", DrillFiles.id(file));
        }
    }

    void check() {
        Done done = table.run("check");
        if (done.code() == 0) {
            table.say(Message.of(Drills.class, "drills.that.does.not.make"));
            return;
        }
        List<AnswerOption> faulty = new ArrayList<>(choices(table.school().entries().stream()
                .filter(entry -> !entry.isSound())
                .toList()));
        if (!faulty.isEmpty()) {
            faulty.add(new AnswerOption(Message.of(Drills.class, "drills.not.now"), LATER));
            String drill = table.questions()
                    .choice(
                            Message.of(Drills.class, "drills.open.a.drill.to"),
                            faulty,
                            Optional.of(faulty.get(0).value()),
                            Message.of(Drills.class, "drills.what.is.wrong.is"))
                    .value();
            if (!drill.equals(LATER)) {
                open(file(drill));
            }
        }
    }

    void show() {
        Questionnaire form = chosen(Message.of(Drills.class, "drills.which.drill"));
        if (!form.filled()) {
            return;
        }
        SchoolFolder school = table.school();
        school.entry(form.answer("drill", "")).ifPresent(entry -> show(entry, school));
    }

    private void show(Entry entry, SchoolFolder school) {
        entry.subject()
                .ifPresent(subject -> table.say(Message.plain(
                        PlainCard.of(subject.drill(), school.school()).stripTrailing())));
        if (!entry.isSound()) {
            table.say(Message.of(Drills.class, "drills.draft.this.drill.has"));
        }
    }

    private Questionnaire chosen(Message question) {
        SchoolFolder school = table.school();
        return table.form("drill").choice("drill", question, () -> choices(school.entries()), HOW_TO_CHOOSE);
    }

    private Path file(String drill) {
        return table.school().entry(drill).map(Entry::file).orElse(table.root());
    }

    /** By their titles; where two have the same, or it cannot be read, the file's name stands there as well. */
    static List<AnswerOption> choices(List<Entry> entries) {
        Set<String> seen = new HashSet<>();
        List<AnswerOption> choices = new ArrayList<>();
        for (Entry entry : entries) {
            String id = DrillFiles.id(entry.file());
            Message title = entry.subject()
                    .map(subject -> subject.drill().title())
                    .filter(seen::add)
                    .map(Message::plain)
                    .orElse(Message.of(Drills.class, "drills.the.file", entry.name()));
            choices.add(new AnswerOption(title, id));
        }
        return choices;
    }
}
