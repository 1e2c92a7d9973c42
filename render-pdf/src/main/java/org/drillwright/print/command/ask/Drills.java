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

/** Drills that are written, changed, checked and shown. */
final class Drills {

    private static final String LATER = "";

    private final Table table;

    Drills(Table table) {
        this.table = table;
    }

    void write() {
        Form form = table.form("write")
                .text(
                        "title",
                        "What is the drill called?",
                        "The title appears on the card, and the file is" + " named after it.")
                .choice(
                        "level",
                        "Who is it for?",
                        this::levels,
                        "The levels are those of your school.yaml. Each says how much one person does on one count, and"
                                + " what the blades do.")
                .choice(
                        "form",
                        "Who is in it?",
                        () -> List.of(
                                new Choice("Two partners, a leader and a follower", "partner"),
                                new Choice("A class following a caller", "solo")),
                        "In a partner drill each partner has something to do on every count.");
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
        String file = Table.written(done);
        if (!file.isEmpty()) {
            table.say("It is complete as it is. Put it in your own words, and save.");
            open(Path.of(file));
        }
    }

    private List<Choice> levels() {
        return Settings.of(table.root()).stream()
                .flatMap(school -> school.levels().stream())
                .map(Level::name)
                .map(name -> new Choice(name, name))
                .toList();
    }

    void change() {
        Form form = chosen("Which drill?");
        if (form.filled()) {
            open(file(form.answer("drill", "")));
        }
    }

    /** The file in an editor, the page in a browser. */
    private void open(Path file) {
        String wish = table.questions()
                .choice(
                        "Open it?",
                        List.of(
                                new Choice("Yes, with a page beside it that shows the card after each save", "page"),
                                new Choice("Only the file", "file"),
                                new Choice("Not now", LATER)),
                        Optional.of("page"),
                        "The file opens in your text editor. The page opens in your browser; it works without a"
                                + " network.")
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
            table.say("That does not make a drill safe: your federation's rules, local codes and a qualified instructor"
                    + " come first.");
            return;
        }
        List<Choice> faulty = new ArrayList<>(choices(table.school().entries().stream()
                .filter(entry -> !entry.isSound())
                .toList()));
        if (!faulty.isEmpty()) {
            faulty.add(new Choice("Not now", LATER));
            String drill = table.questions()
                    .choice(
                            "Open a drill to correct it?",
                            faulty,
                            Optional.of(faulty.get(0).value()),
                            "What is wrong is listed above, with its line in the file. On the page it appears"
                                    + " beside the line, and goes once it is corrected.")
                    .value();
            if (!drill.equals(LATER)) {
                open(file(drill));
            }
        }
    }

    void show() {
        Form form = chosen("Which drill?");
        if (!form.filled()) {
            return;
        }
        SchoolFolder school = table.school();
        school.entry(form.answer("drill", "")).ifPresent(entry -> show(entry, school));
    }

    private void show(Entry entry, SchoolFolder school) {
        entry.subject()
                .ifPresent(subject ->
                        table.say(PlainCard.of(subject.drill(), school.school()).stripTrailing()));
        if (!entry.isSound()) {
            table.say("\nDRAFT: this drill has errors; check all drills to see them.");
        }
    }

    private Form chosen(String question) {
        SchoolFolder school = table.school();
        return table.form("drill")
                .choice(
                        "drill",
                        question,
                        () -> choices(school.entries()),
                        "Type its number, or a part of its title that no other drill shares.");
    }

    private Path file(String drill) {
        return table.school().entry(drill).map(Entry::file).orElse(table.root());
    }

    /** By their titles; where two have the same, or it cannot be read, the file's name stands there as well. */
    static List<Choice> choices(List<Entry> entries) {
        Set<String> seen = new HashSet<>();
        List<Choice> choices = new ArrayList<>();
        for (Entry entry : entries) {
            String id = DrillFiles.id(entry.file());
            String title = entry.subject()
                    .map(subject -> subject.drill().title())
                    .filter(seen::add)
                    .orElse("The file " + entry.name());
            choices.add(new Choice(title, id));
        }
        return choices;
    }
}
