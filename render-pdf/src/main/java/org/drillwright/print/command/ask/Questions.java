package org.drillwright.print.command.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.drillwright.print.command.console.Invocation;

/** Asks a person. An answer is nothing when no more answers come. */
public final class Questions {

    private final Invocation run;

    public Questions(Invocation run) {
        this.run = run;
    }

    /** A line of text; an empty one counts as no answer. */
    Optional<String> text(String question) {
        run.out().print(question + " ");
        run.out().flush();
        try {
            return Optional.ofNullable(run.in().readLine()).map(String::strip).filter(answer -> !answer.isEmpty());
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** One of several, by its number or by how it begins; asks again until it is one. Its index from 0. */
    Optional<Integer> choice(String question, List<String> choices) {
        run.out().println(question);
        for (int at = 0; at < choices.size(); at++) {
            run.out().println(String.format(Locale.ROOT, "%4d  %s", at + 1, choices.get(at)));
        }
        while (true) {
            Optional<String> answer = text("Type a number and press Enter:");
            if (answer.isEmpty()) {
                return Optional.empty();
            }
            Optional<Integer> chosen = match(answer.get(), choices);
            if (chosen.isPresent()) {
                return chosen;
            }
            run.out().println("That is none of them.");
        }
    }

    private static Optional<Integer> match(String answer, List<String> choices) {
        String wanted = answer.toLowerCase(Locale.ROOT);
        List<Integer> found = IntStream.range(0, choices.size())
                .filter(at -> wanted.equals(Integer.toString(at + 1))
                        || choices.get(at).toLowerCase(Locale.ROOT).startsWith(wanted))
                .boxed()
                .toList();
        List<Integer> exact = found.stream()
                .filter(at -> wanted.equals(Integer.toString(at + 1))
                        || choices.get(at).toLowerCase(Locale.ROOT).equals(wanted))
                .toList();
        return (exact.isEmpty() ? found : exact).size() == 1
                ? (exact.isEmpty() ? found : exact).stream().findFirst()
                : Optional.empty();
    }

    /** Whether the answer begins like a yes. */
    public boolean yes(String question) {
        return text(question + " (yes or no)")
                .filter(answer -> answer.toLowerCase(Locale.ROOT).startsWith("y"))
                .isPresent();
    }
}
