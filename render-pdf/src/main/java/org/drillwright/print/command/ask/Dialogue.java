package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Level;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.printing.Count;
import org.drillwright.print.command.printing.picks.Picking;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.SchoolFolder;
import org.drillwright.school.SchoolFolder.Entry;

/** Asks what to do, in plain words, and does it by running the commands; again and again until told to stop. */
public final class Dialogue {

    private static final List<String> TASKS =
            List.of("Check my folder", "Print cards", "New drill", "Show a card", "Stop");

    private final Invocation run;
    private final Path root;
    private final Commands commands;
    private final Questions questions;

    /** Runs a command, as if its arguments had been typed. */
    @FunctionalInterface
    public interface Commands {
        int run(String... arguments);
    }

    public Dialogue(Invocation run, Path root, Commands commands) {
        this.run = run;
        this.root = root;
        this.commands = commands;
        this.questions = new Questions(run);
    }

    /** Talks until told to stop. */
    public void hold() {
        run.out().println("This is Drillwright. It looks after the folder");
        run.out().println("  " + root);
        Optional<Integer> task = next();
        while (task.isPresent() && task.get() < TASKS.size() - 1) {
            run.out().println();
            attempt(task.get());
            task = next();
        }
        run.out().println("Goodbye.");
    }

    private Optional<Integer> next() {
        run.out().println();
        return questions.choice("What would you like to do?", TASKS);
    }

    private void attempt(int task) {
        try {
            switch (task) {
                case 0 -> check();
                case 1 -> print();
                case 2 -> begin();
                default -> show();
            }
        } catch (CannotRun problem) {
            run.out().println(problem.getMessage());
        }
        run.out().flush();
        run.err().flush();
    }

    private void check() {
        int code = commands.run("check", "--school", root.toString());
        if (code == 0) {
            run.out()
                    .println("No errors were found. That does not make a drill safe: your federation's rules, local"
                            + " codes and a qualified instructor come first.");
        }
    }

    private void print() {
        SchoolFolder school = Schools.openFilled(run, root);
        List<String> sets = new Picking(school).names();
        List<String> choices = new ArrayList<>(List.of("All of them"));
        sets.forEach(set -> choices.add("The set " + set));
        questions.choice("Which cards?", choices).ifPresent(chosen -> {
            List<String> arguments = new ArrayList<>(List.of("cards", "--school", root.toString()));
            arguments.add("--out=" + root.resolve(chosen == 0 ? "cards.pdf" : fileName(sets.get(chosen - 1))));
            if (chosen > 0) {
                arguments.add("--set=" + sets.get(chosen - 1));
            }
            print(arguments);
        });
    }

    private static String fileName(String set) {
        return set.replaceAll("[^\\p{L}\\p{M}\\p{N}]+", "-") + ".pdf";
    }

    private void print(List<String> arguments) {
        int code = commands.run(arguments.toArray(String[]::new));
        if (code == 1 && questions.yes("Print all the same, with DRAFT across the cards that have errors?")) {
            arguments.add("--draft");
            commands.run(arguments.toArray(String[]::new));
        }
    }

    private void begin() {
        SchoolFolder school = Schools.open(run, root);
        List<String> levels = school.school().levels().stream().map(Level::name).toList();
        Optional<String> title = questions.text("What is the drill called?");
        Optional<Integer> level = title.flatMap(called -> questions.choice("For whom is it?", levels));
        Optional<Integer> form = level.flatMap(chosen -> questions.choice(
                "Who does it?", List.of("Two partners, a leader and a follower", "A class that follows a caller")));
        form.ifPresent(chosen -> {
            List<String> arguments = new ArrayList<>(List.of("new", "--school", root.toString()));
            arguments.add("--level=" + levels.get(level.orElse(0)));
            if (chosen == 1) {
                arguments.add("--solo");
            }
            arguments.addAll(List.of("--", title.orElse("")));
            commands.run(arguments.toArray(String[]::new));
        });
    }

    private void show() {
        SchoolFolder school = Schools.openFilled(run, root);
        List<Entry> readable = school.entries().stream()
                .filter(entry -> entry.subject().isPresent())
                .toList();
        run.out().println(Count.of(readable.size(), "drill") + " to choose from.");
        List<String> names =
                readable.stream().map(entry -> DrillFiles.id(entry.file())).toList();
        questions.choice("Which one?", names).ifPresent(chosen -> show(readable.get(chosen), school));
    }

    private void show(Entry entry, SchoolFolder school) {
        entry.subject().ifPresent(subject -> run.out().print(PlainCard.of(subject.drill(), school.school())));
        if (!entry.isSound()) {
            run.out().println("\nDRAFT: this drill has errors; check the folder to see them.");
        }
    }
}
