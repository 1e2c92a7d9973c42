package org.drillwright.print.command.school;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.drillwright.notation.Glossary;
import org.drillwright.notation.TermKind;
import org.drillwright.notation.Tongue;
import org.drillwright.notation.Vocabulary;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.console.Exit;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.folder.SchoolOption;
import org.drillwright.print.command.folder.SchoolSearch;
import org.drillwright.print.command.folder.Schools;
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
        Vocabulary vocabulary = Vocabulary.standard()
                .with(Schools.open(run, new SchoolSearch(run).find(school.folder(), List.of()))
                        .school()
                        .words());
        if (term.isEmpty()) {
            list(vocabulary);
            return Exit.DONE;
        }
        String words = String.join(" ", term);
        Glossary.Entry entry =
                Glossary.entry(vocabulary, words).orElseThrow(() -> new CannotRun(unknown(vocabulary, words)));
        run.out()
                .println("'" + words + "' is read as: " + entry.term().id() + " ("
                        + entry.term().kind().name().toLowerCase(Locale.ROOT) + ").");
        show(entry);
        return Exit.DONE;
    }

    private static String unknown(Vocabulary vocabulary, String words) {
        Optional<String> nearest = vocabulary.nearest(words);
        return "'" + words + "' is not a word of the trade that is known here."
                + nearest.map(near -> " Did you mean '" + near + "'?").orElse("");
    }

    private void list(Vocabulary vocabulary) {
        TermKind kind = TermKind.CHOICE;
        for (Glossary.Entry entry : Glossary.entries(vocabulary)) {
            if (entry.term().kind() != kind) {
                kind = entry.term().kind();
                run.out().println();
                run.out().println(kind.name());
            }
            run.out().println("  " + entry.term().id());
            show(entry);
        }
    }

    private void show(Glossary.Entry entry) {
        for (Tongue tongue : Tongue.values()) {
            if (!entry.in(tongue).isEmpty()) {
                run.out().println("      " + tongue.tag() + ": " + String.join(", ", entry.in(tongue)));
            }
        }
    }
}
