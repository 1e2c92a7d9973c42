package org.drillwright.print.command.school;

import java.util.List;
import java.util.Map;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.CommandInSchool;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.Settings;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how words are read. */
@Command(name = "words", sortOptions = false)
public final class WordsCommand extends CommandInSchool {

    @Parameters(paramLabel = "WORDS", arity = "0..*")
    List<String> term = List.of();

    @Option(names = "--all")
    boolean all;

    public WordsCommand(Invocation run, SchoolOption school) {
        super(run, school);
    }

    @Override
    public Integer call() {
        TurnReader reader = TurnReader.standard()
                .with(Settings.of(root(List.of())).map(School::words).orElse(Map.of()));
        if (term.isEmpty()) {
            run.out()
                    .print(all ? WordsAnswer.ofAll(reader, run.language()) : WordsAnswer.wayIn(reader, run.language()));
            return Exit.DONE;
        }
        String words = String.join(" ", term);
        if (reader.terms(words).isEmpty() && !WordsAnswer.isKnown(reader.read(words))) {
            run.say(unknown(reader, words));
            return Exit.MATERIAL;
        }
        run.out().print(WordsAnswer.of(reader, words, all, run.language()));
        return Exit.DONE;
    }

    private static Message unknown(TurnReader reader, String words) {
        return Message.of(WordsCommand.class, "words-command.is.not.a.known", words)
                .then(WordsAnswer.near(reader, words, new Span(0, words.length())))
                .then(Message.of(WordsCommand.class, "words-command.a.school.can.add"));
    }
}
