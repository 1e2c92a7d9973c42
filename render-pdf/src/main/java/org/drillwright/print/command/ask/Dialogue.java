package org.drillwright.print.command.ask;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.school.DrillFiles;
import org.drillwright.wording.Message;

/** Asks what to do, in plain words, and does it by running the commands; again and again until told to stop. */
public final class Dialogue {

    private static final Message HELP = Message.of(Dialogue.class, "dialogue.a.school.is.a");

    private final Invocation run;
    private final Path root;
    private final DialogueContext table;

    /** Runs a command, as if its arguments had been typed. */
    @FunctionalInterface
    public interface Commands {
        Done run(String... arguments);
    }

    /** What can be done, in the order in which it is wanted. */
    private enum Task {
        BEGIN("dialogue.begin.a.school.in"),
        WRITE("dialogue.write.a.new.drill"),
        CHANGE("dialogue.change.a.drill.with"),
        CHECK("dialogue.check.all.drills"),
        CARDS("dialogue.print.cards"),
        HANDOUT("dialogue.print.a.handout.for"),
        CLASS("dialogue.print.what.a.class"),
        RECORD("dialogue.after.class.write.down"),
        SHOW("dialogue.show.a.drill.here"),
        STOP("dialogue.stop");

        private final String label;

        Task(String label) {
            this.label = label;
        }

        AnswerOption choice() {
            return new AnswerOption(Message.of(Dialogue.class, label), name());
        }
    }

    public Dialogue(Invocation run, Path root, Commands commands) {
        this.run = run;
        this.root = root;
        this.table = new DialogueContext(run, root, commands);
    }

    /** Talks until told to stop, or until no more answers come. */
    public void hold() {
        try {
            run.say(Message.of(Dialogue.class, "dialogue.this.is.drillwright.it"));
            run.out().println("  " + root);
            Optional<Task> next = Optional.empty();
            while (next.filter(task -> task == Task.STOP).isEmpty()) {
                run.out().println();
                Task task = ask(next);
                next = task == Task.STOP ? Optional.of(task) : attempt(task);
            }
        } catch (Over over) {
            run.out().print(over.wasSaid() ? "" : "\n");
        }
        run.say(Message.of(Dialogue.class, "dialogue.goodbye.everything.you.wrote"));
    }

    private Task ask(Optional<Task> likely) {
        boolean begun = isBegun();
        if (!begun) {
            run.say(Message.of(Dialogue.class, "dialogue.there.is.no.drill"));
        }
        List<AnswerOption> tasks = new ArrayList<>();
        for (Task task : Task.values()) {
            if (task == Task.STOP || begun == (task != Task.BEGIN)) {
                tasks.add(task.choice());
            }
        }
        Optional<String> proposal = begun ? likely.map(Task::name) : Optional.of(Task.BEGIN.name());
        while (true) {
            try {
                return Task.valueOf(table.questions()
                        .choice(Message.of(Dialogue.class, "dialogue.what.would.you.like"), tasks, proposal, HELP)
                        .value());
            } catch (StepBack first) {
                run.say(Message.of(Dialogue.class, "dialogue.this.is.the.first"));
            }
        }
    }

    private boolean isBegun() {
        try {
            return DrillFiles.settings(root).isPresent()
                    || !DrillFiles.below(root).isEmpty();
        } catch (IOException problem) {
            throw Schools.unreadable(root, problem);
        }
    }

    /** Does it; what is likely to be wanted next. */
    private Optional<Task> attempt(Task task) {
        run.out().println();
        try {
            switch (task) {
                case BEGIN -> new Beginning(table).ask();
                case WRITE -> new Drills(table).write();
                case CHANGE -> new Drills(table).change();
                case CHECK -> new Drills(table).check();
                case CARDS -> new Printing(table).cards();
                case HANDOUT -> new Printing(table).handout();
                case CLASS -> new EveningDialogue(table).print();
                case RECORD -> new EveningDialogue(table).record();
                default -> new Drills(table).show();
            }
        } catch (StepBack back) {
            return Optional.empty();
        } catch (CannotRun problem) {
            run.say(problem.message());
        }
        run.out().flush();
        run.err().flush();
        return Optional.ofNullable(
                        switch (task) {
                            case BEGIN -> Task.WRITE;
                            case WRITE, CHANGE -> Task.CHECK;
                            case CHECK -> Task.CARDS;
                            default -> Task.STOP;
                        })
                .filter(next -> next != Task.STOP);
    }
}
