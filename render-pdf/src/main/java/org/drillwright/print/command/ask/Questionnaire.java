package org.drillwright.print.command.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.drillwright.wording.Message;

/**
 * Questions one after another. 'back' leads to the one before; what was answered stays, and is proposed when the question
 * comes again, be it in the same conversation or after something has failed.
 */
final class Questionnaire {

    private final Questions questions;
    private final Map<String, String> answers;
    private final List<Field> fields = new ArrayList<>();

    /** @param answers kept by who asks; one for each key */
    Questionnaire(Questions questions, Map<String, String> answers) {
        this.questions = questions;
        this.answers = answers;
    }

    private record Field(BooleanSupplier wanted, Runnable ask) {}

    /** A line of text. */
    Questionnaire text(String key, Message question, Message help) {
        fields.add(new Field(
                () -> true,
                () -> answers.put(key, questions.text(question, Optional.ofNullable(answers.get(key)), help))));
        return this;
    }

    /** One of several. */
    Questionnaire choice(String key, Message question, Supplier<List<AnswerOption>> choices, Message help) {
        return choice(() -> true, key, question, choices, help);
    }

    /** One of several, if this is to be asked at all; where there is but one, nobody is asked. */
    Questionnaire choice(
            BooleanSupplier wanted, String key, Message question, Supplier<List<AnswerOption>> choices, Message help) {
        fields.add(new Field(
                () -> wanted.getAsBoolean() && isOpen(key, choices.get()),
                () -> answers.put(
                        key,
                        questions
                                .choice(question, choices.get(), proposal(key, choices.get()), help)
                                .value())));
        return this;
    }

    /** Whether there is a choice; if there is but one answer, that is it. */
    private boolean isOpen(String key, List<AnswerOption> choices) {
        if (choices.size() == 1) {
            answers.put(key, choices.get(0).value());
        }
        return choices.size() > 1;
    }

    /** What was answered last, or else the first, which is the usual one. */
    private Optional<String> proposal(String key, List<AnswerOption> choices) {
        return Optional.ofNullable(answers.get(key))
                .filter(last ->
                        choices.stream().anyMatch(choice -> choice.value().equals(last)))
                .or(() -> choices.stream().findFirst().map(AnswerOption::value));
    }

    /** Whether all was answered; not if somebody went back beyond the first question. */
    boolean filled() {
        int at = 0;
        int way = 1;
        while (at >= 0 && at < fields.size()) {
            if (fields.get(at).wanted().getAsBoolean()) {
                try {
                    fields.get(at).ask().run();
                    way = 1;
                } catch (StepBack back) {
                    way = -1;
                }
            }
            at += way;
        }
        return at >= 0;
    }

    /** What was answered, or would be if it had been asked. */
    String answer(String key, String otherwise) {
        return answers.getOrDefault(key, otherwise);
    }
}
