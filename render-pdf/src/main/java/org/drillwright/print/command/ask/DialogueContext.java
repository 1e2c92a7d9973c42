package org.drillwright.print.command.ask;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.school.SchoolFolder;
import org.drillwright.wording.Message;

/** What all that is talked about needs: the folder, the questions, the commands, and the programs of this computer. */
final class DialogueContext {

    /** Stands for what is looked for in something that was said, and for what may be anything. */
    static final String WANTED = "\u0001";

    static final String ANYTHING = "\u0002";

    private final Invocation run;
    private final Path root;
    private final Dialogue.Commands commands;
    private final Questions questions;
    private final Map<String, Map<String, String>> answers = new HashMap<>();

    DialogueContext(Invocation run, Path root, Dialogue.Commands commands) {
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
    Questionnaire form(String name) {
        return new Questionnaire(questions, answers.computeIfAbsent(name, key -> new HashMap<>()));
    }

    SchoolFolder school() {
        return Schools.openFilled(run, root);
    }

    void say(Message sentence) {
        run.say(sentence);
    }

    String said(Message sentence) {
        return run.said(sentence);
    }

    Locale language() {
        return run.language();
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
    String written(Done done) {
        return gap(done, WholeFile.written(WANTED)).findFirst().orElse("");
    }

    /** What a command put into the gap {@link #WANTED} of something that it said, each time that it said so. */
    Stream<String> gap(Done done, Message said) {
        String pattern = Stream.of(said(said).split("(?=[" + WANTED + ANYTHING + "])|(?<=[" + WANTED + ANYTHING + "])"))
                .map(part -> part.equals(WANTED) ? "(.+?)" : part.equals(ANYTHING) ? ".+?" : Pattern.quote(part))
                .collect(Collectors.joining());
        return Pattern.compile("(?m)" + pattern + (pattern.endsWith(")") ? "$" : ""))
                .matcher(done.said())
                .results()
                .map(found -> found.group(1));
    }

    /** Opens a file for writing in it. */
    void edit(Path file) {
        say(
                run.opener().edit(file)
                        ? Message.of(DialogueContext.class, "table.your.text.editor.opens", file)
                        : Message.of(DialogueContext.class, "table.no.program.could.be", file));
    }

    /** Offers to open what is to be printed. */
    void offer(Path document) {
        if (!questions.agreed(
                Message.of(DialogueContext.class, "table.open.it.now.to"),
                Message.of(DialogueContext.class, "table.it.opens.in.this"))) {
            say(Message.of(DialogueContext.class, "table.it.is.here", document));
            return;
        }
        say(
                run.opener().open(document.toString())
                        ? Message.of(DialogueContext.class, "table.it.is.opening.print")
                        : Message.of(DialogueContext.class, "table.no.program.to.print.it", document));
    }
}
