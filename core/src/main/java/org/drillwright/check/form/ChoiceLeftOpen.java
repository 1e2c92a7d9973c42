package org.drillwright.check.form;

import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Level;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** No turn leaves something open where turns are not free. */
public final class ChoiceLeftOpen implements Rule {

    private static final RuleText TEXT = new RuleText(ChoiceLeftOpen.class, "choice-left-open", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        if (subject.level().turns() == Level.Turns.FREE) {
            return;
        }
        for (Subject.Place turn : subject.turns()) {
            Written read = subject.turnWords(turn.step(), turn.side());
            report(subject, turn.step(), read, findings);
            Written printed = subject.printedWords(turn.step(), turn.side());
            if (!printed.text().equals(read.text())) {
                report(subject, turn.step(), printed, findings);
            }
        }
    }

    private static void report(Subject subject, int step, Written words, Findings findings) {
        Utterance read = subject.reader().read(words.text());
        for (Span choice : read.open()) {
            if (followsUnread(choice, read, words.text())) {
                continue;
            }
            findings.error(
                    TEXT.id(),
                    words.span(choice),
                    Message.of(
                            ChoiceLeftOpen.class,
                            "choice-left-open.what",
                            words.text().substring(choice.start(), choice.end()),
                            subject.count(step)),
                    Message.of(ChoiceLeftOpen.class, "choice-left-open.way"));
        }
    }

    /** Between what and what a choice is left, is not known where the words before it are not: 'by the head or trunk'. */
    private static boolean followsUnread(Span choice, Utterance read, String text) {
        return read.unread().stream()
                .anyMatch(word -> word.end() <= choice.start()
                        && text.substring(word.end(), choice.start()).isBlank());
    }
}
