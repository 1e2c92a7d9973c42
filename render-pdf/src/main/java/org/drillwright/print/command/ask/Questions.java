package org.drillwright.print.command.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.drillwright.print.command.console.Invocation;

/**
 * Asks a person. Whatever is asked, 'back' leads to the question before, 'quit' ends the conversation, and 'help' tells
 * what is wanted.
 */
public final class Questions {

    private static final Set<String> BACK = Set.of("back", "b");
    private static final Set<String> QUIT = Set.of("quit", "q", "exit", "stop");
    private static final Set<String> HELP = Set.of("help", "h", "?");

    private static final String WORDS =
            "At every question: 'back' returns to the one before, 'quit' ends, 'help' explains.";

    private final Invocation run;

    public Questions(Invocation run) {
        this.run = run;
    }

    /**
     * A line of text that is not empty.
     *
     * @param proposal what Enter alone answers, if anything
     */
    String text(String question, Optional<String> proposal, String help) {
        String asked = question + proposal.map(words -> " [" + words + "]").orElse("");
        while (true) {
            String answer = line(asked, help);
            if (!answer.isEmpty()) {
                return answer;
            }
            if (proposal.isPresent()) {
                return proposal.get();
            }
            run.out().println("Type a few words and press Enter.");
        }
    }

    /**
     * One of several, by its number or by words of its label.
     *
     * @param proposal the value that Enter alone answers, if any
     */
    Choice choice(String question, List<Choice> choices, Optional<String> proposal, String help) {
        run.out().println(question);
        for (int at = 0; at < choices.size(); at++) {
            run.out()
                    .println(String.format(
                            Locale.ROOT, "%4d  %s", at + 1, choices.get(at).label()));
        }
        Optional<Integer> usual = proposal.flatMap(value -> index(choices, value));
        String asked = usual.map(at -> "Type a number and press Enter [" + (at + 1) + "]:")
                .orElse("Type a number and press Enter:");
        while (true) {
            String answer = line(asked, help);
            Optional<Integer> chosen = answer.isEmpty() ? usual : match(answer, choices);
            if (chosen.isPresent()) {
                return choices.get(chosen.get());
            }
            run.out()
                    .println(
                            answer.isEmpty()
                                    ? "Please choose one."
                                    : "That fits none of them, or more than one. Type one of the numbers, or 'back'.");
        }
    }

    /** A yes or a no; Enter alone is a yes. */
    boolean agreed(String question, String help) {
        while (true) {
            String answer = line(question + " (yes or no) [yes]", help).toLowerCase(Locale.ROOT);
            if (answer.isEmpty() || "yes".startsWith(answer)) {
                return true;
            }
            if ("no".startsWith(answer)) {
                return false;
            }
            run.out().println("Type yes or no.");
        }
    }

    /** What a command asks of its own: whatever is not a yes is a no. */
    public boolean yes(String question) {
        return read(question + " (yes or no)")
                .filter(answer -> answer.toLowerCase(Locale.ROOT).startsWith("y"))
                .isPresent();
    }

    private String line(String asked, String help) {
        while (true) {
            String answer = read(asked).orElseThrow(() -> new Over(false));
            String word = answer.toLowerCase(Locale.ROOT).replaceAll("^'|'$", "");
            if (BACK.contains(word)) {
                throw new Back();
            }
            if (QUIT.contains(word)) {
                throw new Over(true);
            }
            if (!HELP.contains(word)) {
                return answer;
            }
            run.out().println(help.isEmpty() ? WORDS : help + "\n" + WORDS);
        }
    }

    /** What was typed; nothing if no more comes. */
    private Optional<String> read(String asked) {
        run.out().print(asked + " ");
        run.out().flush();
        try {
            return Optional.ofNullable(run.in().readLine()).map(String::strip);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Optional<Integer> index(List<Choice> choices, String value) {
        return IntStream.range(0, choices.size())
                .filter(at -> choices.get(at).value().equals(value))
                .boxed()
                .findFirst();
    }

    /** By its number; or by its words, if they are those of just one: all of them, else their beginning, else a part. */
    private static Optional<Integer> match(String answer, List<Choice> choices) {
        if (answer.matches("\\d{1,4}")) {
            int number = Integer.parseInt(answer);
            return number >= 1 && number <= choices.size() ? Optional.of(number - 1) : Optional.empty();
        }
        List<BiPredicate<String, String>> ways = List.of(String::equals, String::startsWith, String::contains);
        String wanted = answer.toLowerCase(Locale.ROOT);
        for (BiPredicate<String, String> way : ways) {
            List<Integer> found = IntStream.range(0, choices.size())
                    .filter(at -> way.test(choices.get(at).label().toLowerCase(Locale.ROOT), wanted))
                    .boxed()
                    .toList();
            if (!found.isEmpty()) {
                return found.size() == 1 ? found.stream().findFirst() : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
