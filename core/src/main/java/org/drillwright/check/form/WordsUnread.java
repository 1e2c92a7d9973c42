package org.drillwright.check.form;

import java.util.Locale;
import java.util.Optional;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Findings;
import org.drillwright.source.Nearest;
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** Words that are not known are shown, with the nearest that are. */
public final class WordsUnread implements Rule {

    private static final RuleText TEXT = new RuleText(WordsUnread.class, "words-unread", Severity.NOTE, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        for (String end : new String[] {"start", "opening", "closing"}) {
            report(subject, subject.words(FieldPath.of(end)), subject.script().part(end), findings);
        }
        for (Subject.Place turn : subject.turns()) {
            report(
                    subject,
                    subject.turnWords(turn.step(), turn.side()),
                    subject.turn(turn.step(), turn.side()),
                    findings);
        }
    }

    private static void report(Subject subject, Written words, Utterance read, Findings findings) {
        Message rest = read.unread().isEmpty() ? Message.none() : rest(subject, words, read);
        for (Span unread : read.stretchesUnread(words.text())) {
            String word = words.text().substring(unread.start(), unread.end());
            if (read.unread().contains(unread) && word.contains(" ")) {
                // Words are left over one by one; several in one are those of a turn of which nobody knows whose deed
                // it tells.
                findings.note(
                        TEXT.id(),
                        words.span(unread),
                        Message.of(WordsUnread.class, "words-unread.nobody"),
                        Message.of(
                                WordsUnread.class,
                                "words-unread.name-who",
                                subject.typed(WordsUnread.class, "typed.order"),
                                subject.typed(WordsUnread.class, "typed.told")));
                continue;
            }
            Optional<Slip> slip = slip(subject, words, read, unread);
            boolean whole = slip.filter(one -> one.word().equals(word)).isPresent();
            findings.note(
                    TEXT.id(),
                    words.span(unread),
                    Message.of(WordsUnread.class, "words-unread.what", word)
                            .then(slip.map(one -> whole
                                            ? Nearest.meant(one.meant())
                                            : Message.of(
                                                    WordsUnread.class,
                                                    "words-unread.meant-for",
                                                    one.meant(),
                                                    one.word()))
                                    .orElse(Message.none()))
                            .then(rest),
                    Message.of(
                            WordsUnread.class,
                            "words-unread.way",
                            word.toLowerCase(Locale.ROOT),
                            slip.filter(one -> whole).map(Slip::meant).orElse("…")));
            rest = Message.none();
        }
    }

    /** A word and the one that it was perhaps meant to be. */
    private record Slip(String word, String meant) {}

    /** The slip of the pen among words that were left over together. */
    private static Optional<Slip> slip(Subject subject, Written words, Utterance read, Span stretch) {
        for (Span word : read.unread()) {
            if (word.start() >= stretch.start() && word.end() <= stretch.end()) {
                Optional<String> near = subject.reader().meant(words.text(), word);
                if (near.isPresent()) {
                    return Optional.of(new Slip(words.text().substring(word.start(), word.end()), near.get()));
                }
            }
        }
        return Optional.empty();
    }

    private static Message rest(Subject subject, Written words, Utterance read) {
        TurnReader reader = subject.reader();
        String said = reader.said(read, reader.tag(words.text()));
        return said.isEmpty() ? Message.none() : Message.of(WordsUnread.class, "words-unread.rest", said);
    }
}
