package org.drillwright.print.command.school;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.Term;
import org.drillwright.reading.TermKind;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.Span;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the words that are understood. */
@Command(
        name = "words",
        header = "Lists the words of the trade that are understood.",
        description = "With a word: what it is read as, and how else that is said. A school adds its own words in"
                + " school.yaml.%n",
        sortOptions = false,
        exitCodeListHeading = Exit.HEADING,
        exitCodeList = {Exit.DONE_TEXT, Exit.UNABLE_TEXT})
public final class WordsCommand implements Callable<Integer> {

    private final Invocation run;
    private final SchoolOption school;

    @Parameters(paramLabel = "TERM", arity = "0..*", description = "A word, or several that belong together.")
    List<String> term = List.of();

    public WordsCommand(Invocation run, SchoolOption school) {
        this.run = run;
        this.school = school;
    }

    @Override
    public Integer call() {
        TurnReader reader = TurnReader.standard()
                .with(Schools.open(run, new SchoolSearch(run).find(school.folder(), List.of()))
                        .school()
                        .words());
        if (term.isEmpty()) {
            list(reader);
            return Exit.DONE;
        }
        String words = String.join(" ", term);
        Set<Term> terms = reader.terms(words);
        if (terms.isEmpty()) {
            throw new CannotRun(unknown(reader, words));
        }
        for (Term one : terms) {
            run.out()
                    .println("'" + words + "' is read as: " + one.id() + " ("
                            + one.kind().word() + ").");
            reader.glossary().item(one).ifPresent(item -> show(reader, item));
        }
        return Exit.DONE;
    }

    private static String unknown(TurnReader reader, String words) {
        Optional<String> nearest = reader.meant(words, new Span(0, words.length()));
        return "'" + words + "' is not a word of the trade that is known here."
                + nearest.map(near -> " Did you mean '" + near + "'?").orElse("");
    }

    private void list(TurnReader reader) {
        Optional<TermKind> kind = Optional.empty();
        for (Glossary.Item item : reader.glossary().items()) {
            if (!kind.equals(Optional.of(item.term().kind()))) {
                kind = Optional.of(item.term().kind());
                run.out().println();
                run.out().println(item.term().kind().name());
            }
            run.out().println("  " + item.term().id());
            show(reader, item);
        }
    }

    private void show(TurnReader reader, Glossary.Item item) {
        for (String tag : reader.tags()) {
            if (!item.in(tag).isEmpty()) {
                run.out().println("      " + tag + ": " + String.join(", ", item.in(tag)));
            }
        }
    }
}
