package org.drillwright.print.command.ask;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.wording.Message;

/**
 * Asks a person. Whatever is asked, 'back' leads to the question before, 'quit' ends the conversation, and 'help' tells
 * what is wanted.
 */
public final class Questions {

    private static final String BACK = "questions.words.back";
    private static final String QUIT = "questions.words.quit";
    private static final String HELP = "questions.words.help";
    private static final String YES = "questions.words.yes";
    private static final String NO = "questions.words.no";

    private static final Message WORDS = Message.of(Questions.class, "questions.at.every.question.back");

    private final Invocation run;

    public Questions(Invocation run) {
        this.run = run;
    }

    /**
     * A line of text that is not empty.
     *
     * @param proposal what Enter alone answers, if anything
     */
    String text(Message question, Optional<String> proposal, Message help) {
        String asked =
                run.said(question) + proposal.map(words -> " [" + words + "]").orElse("");
        while (true) {
            String answer = line(asked, help);
            if (!answer.isEmpty()) {
                return answer;
            }
            if (proposal.isPresent()) {
                return proposal.get();
            }
            run.say(Message.of(Questions.class, "questions.type.a.few.words"));
        }
    }

    /**
     * One of several, by its number or by words of its label.
     *
     * @param proposal the value that Enter alone answers, if any
     */
    AnswerOption choice(Message question, List<AnswerOption> choices, Optional<String> proposal, Message help) {
        run.say(question);
        for (int at = 0; at < choices.size(); at++) {
            run.out()
                    .println(String.format(
                            Locale.ROOT,
                            "%4d  %s",
                            at + 1,
                            run.said(choices.get(at).label())));
        }
        Optional<Integer> usual = proposal.flatMap(value -> index(choices, value));
        String asked = run.said(usual.map(at -> Message.of(Questions.class, "questions.type.a.number.and", at + 1))
                .orElse(Message.of(Questions.class, "questions.type.a.number")));
        while (true) {
            String answer = line(asked, help);
            Optional<Integer> chosen = answer.isEmpty() ? usual : match(answer, choices);
            if (chosen.isPresent()) {
                return choices.get(chosen.get());
            }
            run.say(
                    answer.isEmpty()
                            ? Message.of(Questions.class, "questions.please.choose.one")
                            : Message.of(Questions.class, "questions.that.fits.none.of"));
        }
    }

    /** One of two; whether it is the first, which Enter alone answers. */
    boolean isFirst(Message question, Message first, Message second, Message help) {
        String usual = "first";
        List<AnswerOption> both = List.of(new AnswerOption(first, usual), new AnswerOption(second, "second"));
        return choice(question, both, Optional.of(usual), help).value().equals(usual);
    }

    /** A yes or a no; Enter alone is a yes. */
    boolean agreed(Message question, Message help) {
        while (true) {
            String answer = line(run.said(Message.of(Questions.class, "questions.yes.or.no.yes", question)), help)
                    .toLowerCase(Locale.ROOT);
            if (answer.isEmpty() || begins(YES, answer)) {
                return true;
            }
            if (begins(NO, answer)) {
                return false;
            }
            run.say(Message.of(Questions.class, "questions.type.yes.or.no"));
        }
    }

    /** What a command asks of its own: whatever is not a yes is a no. */
    public boolean yes(Message question) {
        return read(run.said(Message.of(Questions.class, "questions.yes.or.no", question)))
                .map(answer -> answer.toLowerCase(Locale.ROOT))
                .filter(answer -> !answer.isEmpty() && begins(YES, answer.substring(0, 1)))
                .isPresent();
    }

    private String line(String asked, Message help) {
        while (true) {
            String answer = read(asked).orElseThrow(() -> new Over(false));
            String word = answer.toLowerCase(Locale.ROOT).replaceAll("^'|'$", "");
            if (words(BACK).contains(word)) {
                throw new StepBack();
            }
            if (words(QUIT).contains(word)) {
                throw new Over(true);
            }
            if (!words(HELP).contains(word)) {
                return answer;
            }
            run.out().print(help.isEmpty() ? "" : run.said(help) + "\n");
            run.say(WORDS);
        }
    }

    /** What may be answered, in the language spoken and in English: the first is the word that is told of. */
    private Set<String> words(String key) {
        Set<String> words = new HashSet<>();
        for (Locale language : List.of(run.language(), Locale.ENGLISH)) {
            words.addAll(List.of(Message.of(Questions.class, key).in(language).split(" ")));
        }
        return words;
    }

    private boolean begins(String key, String answer) {
        return words(key).stream().anyMatch(word -> word.startsWith(answer));
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

    private static Optional<Integer> index(List<AnswerOption> choices, String value) {
        return IntStream.range(0, choices.size())
                .filter(at -> choices.get(at).value().equals(value))
                .boxed()
                .findFirst();
    }

    /** By its number; or by its words, if they are those of just one: all of them, else their beginning, else a part. */
    private Optional<Integer> match(String answer, List<AnswerOption> choices) {
        if (answer.matches("\\d{1,4}")) {
            int number = Integer.parseInt(answer);
            return number >= 1 && number <= choices.size() ? Optional.of(number - 1) : Optional.empty();
        }
        List<BiPredicate<String, String>> ways = List.of(String::equals, String::startsWith, String::contains);
        String wanted = answer.toLowerCase(run.language());
        for (BiPredicate<String, String> way : ways) {
            List<Integer> found = IntStream.range(0, choices.size())
                    .filter(at -> way.test(run.said(choices.get(at).label()).toLowerCase(run.language()), wanted))
                    .boxed()
                    .toList();
            if (!found.isEmpty()) {
                return found.size() == 1 ? found.stream().findFirst() : Optional.empty();
            }
        }
        return Optional.empty();
    }
}
