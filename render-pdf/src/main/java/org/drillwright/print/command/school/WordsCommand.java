package org.drillwright.print.command.school;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.model.School;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Settings;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Span;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how words are read. */
@Command(name = "words", sortOptions = false)
public final class WordsCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "WORDS", arity = "0..*")
    List<String> term = List.of();

    @Option(names = "--all")
    boolean all;

    public WordsCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        TurnReader reader = TurnReader.standard()
                .with(Settings.of(new SchoolSearch(run).find(school.folder(), List.of()))
                        .map(School::words)
                        .orElse(Map.of()));
        if (term.isEmpty()) {
            run.out().print(all ? WordsAnswer.ofAll(reader) : WordsAnswer.wayIn(reader));
            return Exit.DONE;
        }
        String words = String.join(" ", term);
        if (reader.terms(words).isEmpty() && !WordsAnswer.isKnown(reader.read(words))) {
            run.out().println(unknown(reader, words));
            return Exit.MATERIAL;
        }
        run.out().print(WordsAnswer.of(reader, words, all));
        return Exit.DONE;
    }

    private static String unknown(TurnReader reader, String words) {
        Optional<String> nearest = reader.meant(words, new Span(0, words.length()));
        return "'" + words + "' is not a known fencing term."
                + nearest.map(near -> " Did you mean '" + near + "'?").orElse("")
                + " A school can add its own words in school.yaml, under 'words'.";
    }
}
