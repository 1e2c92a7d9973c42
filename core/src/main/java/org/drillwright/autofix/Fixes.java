package org.drillwright.autofix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.check.Suggestions;
import org.drillwright.check.jury.Judge;
import org.drillwright.formatter.Scalars;
import org.drillwright.model.Side;
import org.drillwright.phrase.Attempt.Otherwise;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Finding;
import org.drillwright.source.Nearest;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** Ways to mend what was found, each as an edit of the text: those of a drill were played, or at least judged, with it made. */
public final class Fixes {

    private final Subject subject;
    private final Draft draft;
    private final KeyInsertion page;

    private Fixes(Subject subject) {
        this.subject = subject;
        this.draft = new Draft(subject);
        this.page = new KeyInsertion(subject.file(), subject.places());
    }

    /** Those of a drill: what has one right answer first, then the turns that the rules name, then turns for empty ones. */
    public static List<Fix> of(Subject subject) {
        Fixes fixes = new Fixes(subject);
        List<Fix> all = new ArrayList<>(Autofix.each(subject));
        Judge.remedies(subject).forEach(remedy -> fixes.turn(remedy.turn()).ifPresent(all::add));
        Suggestions.of(subject)
                .forEach(proposal -> proposal.turns()
                        .forEach(words -> fixes.empty(proposal.step(), proposal.side(), words)
                                .ifPresent(all::add)));
        return all.stream().distinct().toList();
    }

    /** The word that was meant, in place of the one that was found; none where none is named. */
    public static Optional<Fix> meant(Finding finding) {
        String written = finding.file().slice(finding.span());
        return Nearest.askedIn(finding.words())
                .filter(word -> isNamed(unquoted(written), finding) && !word.equals(unquoted(written)))
                .map(word -> new Fix(
                        Message.of(Fixes.class, "change", word),
                        List.of(finding),
                        new Edit(finding.span(), quotedAs(written, word)),
                        false));
    }

    /** Whether a finding is about a word as a whole. */
    private static boolean isNamed(String word, Finding finding) {
        return finding.what().parts().anyMatch(part -> String.valueOf(part).equals(word));
    }

    private static String unquoted(String written) {
        boolean quoted = written.length() > 1 && "\"'".indexOf(written.charAt(0)) >= 0;
        return quoted ? written.substring(1, written.length() - 1) : written;
    }

    /** A word in the quotes that the old one has. */
    private static String quotedAs(String written, String word) {
        return written.equals(unquoted(written)) ? word : written.charAt(0) + word + written.charAt(0);
    }

    /** A turn that plays, in place of one that does not. */
    private Optional<Fix> turn(Otherwise turn) {
        String words = subject.said(turn.actions());
        boolean read = subject.reader().read(words).actions().equals(turn.actions());
        Span span = subject.turnWords(turn.step(), turn.side()).whole();
        return read && span.length() > 0
                ? draft.fix(
                        Message.of(Fixes.class, "change", words),
                        new Edit(value(span), inLine(words, turn.step())),
                        false)
                : Optional.empty();
    }

    /** The words of a value with their quotes. */
    private Span value(Span words) {
        return subject.places().fields().values().stream()
                .map(field -> field.value())
                .filter(value -> value.start() <= words.start() && words.end() <= value.end())
                .min(Comparator.comparingInt(Span::length))
                .orElse(words);
    }

    private Optional<Fix> empty(int step, Side side, String words) {
        FieldPath path = Subject.stepPath(step);
        Side other = side.other();
        return page.keyAfter(path, List.of("number", "call", other.word()), side.word() + ": " + inLine(words, step))
                .flatMap(edit -> draft.fix(Message.of(Fixes.class, "add", side.word(), words), edit, false));
    }

    private String inLine(String words, int step) {
        return Scalars.of(words, page.isBracketed(Subject.stepPath(step)), true);
    }
}
