package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.school.SchoolFolder;

/** What all that is talked about needs: the folder, the questions, the commands, and the programs of this computer. */
final class Table {

    private static final Pattern WRITTEN = Pattern.compile("(?m)^Written: (.+)$");

    private final Invocation run;
    private final Path root;
    private final Dialogue.Commands commands;
    private final Questions questions;
    private final Map<String, Map<String, String>> answers = new HashMap<>();

    Table(Invocation run, Path root, Dialogue.Commands commands) {
        this.run = run;
        this.root = root;
        this.commands = commands;
        this.questions = new Questions(run);
    }

    Path root() {
        return root;
    }

    Questions questions() {
        return questions;
    }

    /** A form that remembers what was answered when it was filled in before. */
    Form form(String name) {
        return new Form(questions, answers.computeIfAbsent(name, key -> new HashMap<>()));
    }

    SchoolFolder school() {
        return Schools.openFilled(run, root);
    }

    void say(String sentence) {
        run.out().println(sentence);
    }

    /** Runs a command on this school. */
    Done run(String command, List<String> arguments) {
        List<String> all = new ArrayList<>(List.of(command, "--school=" + root));
        all.addAll(arguments);
        Done done = commands.run(all.toArray(String[]::new));
        run.out().flush();
        run.err().flush();
        return done;
    }

    Done run(String command, String... arguments) {
        return run(command, List.of(arguments));
    }

    /** The file that a command says it wrote. */
    static String written(Done done) {
        Matcher said = WRITTEN.matcher(done.said());
        return said.find() ? said.group(1) : "";
    }

    /** Opens a file for writing in it. */
    void edit(Path file) {
        say(
                run.opener().edit(file)
                        ? "Your text editor opens " + file
                        : "No program could be started for it here. Open it yourself, in any plain text editor:\n  "
                                + file);
    }

    /** Offers to open what is to be printed. */
    void offer(Path document) {
        if (!questions.agreed(
                "Open it now, to print it?", "It opens in this computer's program for PDF files. Print from there.")) {
            say("It is here:\n  " + document);
            return;
        }
        say(
                run.opener().open(document.toString())
                        ? "It is opening. Print it at 100 % (actual size)."
                        : "No program could be started for it here. Open it yourself, and print it at 100 %"
                                + " (actual size):\n  "
                                + document);
    }
}
