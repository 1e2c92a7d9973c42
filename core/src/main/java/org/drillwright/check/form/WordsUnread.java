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
import org.drillwright.source.Severity;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** Words that are not known are shown, with the nearest that are. */
public final class WordsUnread implements Rule {

    private static final RuleText TEXT = new RuleText(
            "words-unread",
            Severity.NOTE,
            false,
            "Words that could not be read are shown, with the nearest known term.",
            "What is not read is not judged; a school can add its own words in school.yaml.",
            """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quatre.
            #                   ^^^^^^
                distance: lunge
                safety: Arrive softly and let the blade bend.
            """,
            """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - leader: Recover on guard in sixte.
                follower: Return to guard in sixte.
                distance: extension to lunge
            """);

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
        String rest = read.unread().isEmpty() ? "" : rest(subject, words, read);
        for (Span unread : read.stretchesUnread(words.text())) {
            String word = words.text().substring(unread.start(), unread.end());
            Optional<Slip> slip = slip(subject, words, read, unread);
            boolean whole = slip.filter(one -> one.word().equals(word)).isPresent();
            findings.note(
                    TEXT.id(),
                    words.span(unread),
                    "'" + word + "' could not be read."
                            + slip.map(one -> " Did you mean '" + one.meant() + "'"
                                            + (whole ? "" : " for '" + one.word() + "'") + "?")
                                    .orElse("")
                            + rest,
                    "To add it, write in school.yaml: words: {" + word.toLowerCase(Locale.ROOT) + ": "
                            + slip.filter(one -> whole).map(Slip::meant).orElse("…")
                            + "}, with a fencing term of the same meaning after the colon.");
            rest = "";
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

    private static String rest(Subject subject, Written words, Utterance read) {
        TurnReader reader = subject.reader();
        String said = reader.said(read, reader.tag(words.text()));
        return said.isEmpty() ? "" : " The rest is read as: " + said;
    }
}
