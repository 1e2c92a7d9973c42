package org.drillwright.explain;

import java.util.List;
import java.util.Locale;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.State;
import org.drillwright.phrase.Where;
import org.drillwright.source.Finding;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A drill as it was played, in plain text. */
public final class Explanation {

    private final Subject subject;
    private final Replay replay;
    private final CountFindings findings;
    private final Locale language;
    private final StringBuilder text = new StringBuilder();

    private Explanation(Subject subject, Locale language) {
        this.language = language;
        this.subject = subject;
        this.replay = subject.replay();
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
        moves(replay.opening());
        line(Message.of(Explanation.class, "start"));
        state(replay.start());
        for (int step = 0; step < replay.counts().size(); step++) {
            count(step, replay.counts().get(step));
        }
        line(Message.of(Explanation.class, "closing"));
        moves(replay.closing());
        coverage();
        return text.toString();
    }

    private void count(int step, Count count) {
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
        for (int at = 0; at < count.moves().size(); at++) {
            Played played = count.moves().get(at);
            line("  ", AttackEnd.of(count, at).map(end -> move(played, end)).orElse(move(played)));
        }
        findings.in(step).forEach(this::finding);
        state(count.end());
    }

    private void finding(Finding finding) {
        Message severity =
                Message.of(Explanation.class, "severity." + finding.severity().word());
        line("  ", Message.of(Explanation.class, "finding", severity, finding.rule(), finding.what()));
    }

    private void moves(List<Played> moves) {
        moves.forEach(played -> line("  ", move(played)));
    }

    private Message move(Played played) {
        return Message.of(Explanation.class, "move", Terms.of(played.move().by()), words(played, subject));
    }

    private Message move(Played played, AttackEnd end) {
        return Message.of(
                Explanation.class, "move.end", Terms.of(played.move().by()), words(played, subject), EndWords.of(end));
    }

    /** A move as it was read, in the words of the trade. */
    public static Message words(Played played, Subject subject) {
        return ActionWords.of(
                played.move().parts().stream().map(Clause::action).distinct().toList(), subject);
    }

    private void state(State state) {
        for (Side side : Side.values()) {
            if (subject.isPartnerDrill() || side == Side.FOLLOWER) {
                line("    = ", Message.of(Explanation.class, "move", Terms.of(side), StateWords.of(state.of(side))));
            }
        }
        line("    = ", StateWords.shared(state));
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
