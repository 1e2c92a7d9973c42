package org.drillwright.explain;

import java.util.List;
import java.util.Locale;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.phrase.Where;
import org.drillwright.source.Finding;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A drill as it was played, in plain text. */
public final class Explanation {

    private final Subject subject;
    private final CountFindings findings;
    private final Locale language;
    private final StringBuilder text = new StringBuilder();

    private Explanation(Subject subject, Locale language) {
        this.language = language;
        this.subject = subject;
        this.findings = CountFindings.of(subject);
    }

    /** The whole phrase, count by count, in a language. */
    public static String text(Subject subject, Locale language) {
        return new Explanation(subject, language).write();
    }

    private String write() {
        line(subject.drill().title() + " (" + subject.drill().id() + ")");
        line("");
        line(Message.of(Explanation.class, "opening"));
        Account account = Account.of(subject);
        moves(account.opening());
        line(Message.of(Explanation.class, "start"));
        standing(account.opening());
        for (int step = 0; step < account.counts().size(); step++) {
            count(step, account.counts().get(step));
        }
        line(Message.of(Explanation.class, "closing"));
        moves(account.closing());
        coverage();
        return text.toString();
    }

    private void count(int step, Account.Part count) {
        line(Message.of(Explanation.class, "count", subject.count(step)));
        for (Side side : Side.values()) {
            String words = subject.turnWords(step, side).text();
            line(
                    "  ",
                    Message.of(
                            Explanation.class,
                            "turn",
                            Terms.of(side),
                            words.isEmpty() ? Message.of(Explanation.class, "turn.none") : words));
        }
        moves(count);
        findings.in(step).forEach(this::finding);
        standing(count);
    }

    private void finding(Finding finding) {
        Message severity =
                Message.of(Explanation.class, "severity." + finding.severity().word());
        line("  ", Message.of(Explanation.class, "finding", severity, finding.rule(), finding.what()));
    }

    private void moves(Account.Part part) {
        part.moves().forEach(move -> line("  ", said(move)));
    }

    private static Message said(Account.Told move) {
        Message by = Terms.of(move.by());
        return move.fate()
                .map(fate -> Message.of(Explanation.class, "move.end", by, move.read(), fate))
                .orElse(Message.of(Explanation.class, "move", by, move.read()));
    }

    private void standing(Account.Part part) {
        part.standing()
                .fencers()
                .forEach((side, words) -> line("    = ", Message.of(Explanation.class, "move", Terms.of(side), words)));
        line("    = ", part.standing().between());
    }

    private void coverage() {
        Coverage coverage = subject.coverage();
        line("");
        line(Message.of(
                Explanation.class, "judged", coverage.counts() - coverage.gaps().size(), coverage.counts()));
        for (Coverage.Gap gap : coverage.gaps()) {
            line("  ", Message.of(Explanation.class, "gap.count", subject.count(gap.step()), unknown(gap)));
        }
        for (Coverage.End end : coverage.ends()) {
            Message unknown = unread(Message.listed(end.unknown()), end.words());
            line("  ", Message.of(Explanation.class, "gap.part", Where.part(end.part()), unknown));
        }
    }

    /** What is not known of a count that could not be judged, since when, and which words were not read. */
    public static Message unknown(Coverage.Gap gap) {
        Message unknown = Message.listed(gap.unknown());
        Message told =
                gap.since().isEmpty() ? unknown : Message.of(Explanation.class, "unknown.since", unknown, gap.since());
        return unread(told, gap.words());
    }

    private static Message unread(Message unknown, List<String> words) {
        return words.isEmpty()
                ? unknown
                : Message.of(
                        Explanation.class,
                        "unknown.unread",
                        unknown,
                        Message.listed(words.stream().map(Message::quoted).toList()));
    }

    private void line(Message line) {
        line("", line);
    }

    private void line(String indent, Message line) {
        line(indent + line.in(language));
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
