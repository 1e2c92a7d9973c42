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
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;

/** A drill as it was played, in plain text. */
public final class Explanation {

    private final Subject subject;
    private final Replay replay;
    private final CountFindings findings;
    private final StringBuilder text = new StringBuilder();

    private Explanation(Subject subject) {
        this.subject = subject;
        this.replay = subject.replay();
        this.findings = CountFindings.of(subject);
    }

    /** The whole phrase, count by count. */
    public static String text(Subject subject) {
        return new Explanation(subject).write();
    }

    private String write() {
        line(subject.drill().title() + " (" + subject.drill().id() + ")");
        line("");
        line("Opening");
        moves(replay.opening());
        line("Start");
        state(replay.start());
        for (int step = 0; step < replay.counts().size(); step++) {
            count(step, replay.counts().get(step));
        }
        line("Closing");
        moves(replay.closing());
        coverage();
        return text.toString();
    }

    private void count(int step, Count count) {
        line("Count " + subject.count(step));
        for (Side side : Side.values()) {
            String words = subject.turnWords(step, side).text();
            line("  " + side.word() + "'s turn: " + (words.isEmpty() ? "nothing" : words));
        }
        for (int at = 0; at < count.moves().size(); at++) {
            Played played = count.moves().get(at);
            String end =
                    AttackEnd.of(count, at).map(one -> "; " + EndWords.of(one)).orElse("");
            line("  " + played.move().by().word() + ": " + words(played, subject) + end);
        }
        findings.in(step).forEach(this::finding);
        state(count.end());
    }

    private void finding(Finding finding) {
        line("  ! " + finding.severity().name().toLowerCase(Locale.ROOT) + " " + finding.rule() + ": "
                + finding.what().english());
    }

    private void moves(List<Played> moves) {
        moves.forEach(played -> line("  " + played.move().by().word() + ": " + words(played, subject)));
    }

    /** A move as it was read, in the words of the trade. */
    public static String words(Played played, Subject subject) {
        return ActionWords.of(
                played.move().parts().stream().map(Clause::action).distinct().toList(), subject);
    }

    private void state(State state) {
        for (Side side : Side.values()) {
            if (subject.isPartnerDrill() || side == Side.FOLLOWER) {
                line("    = " + side.word() + ": " + StateWords.of(state.of(side)));
            }
        }
        line("    = " + StateWords.shared(state));
    }

    private void coverage() {
        Coverage coverage = subject.coverage();
        line("");
        line(coverage.counts() - coverage.gaps().size() + " of " + coverage.counts() + " counts were judged.");
        for (Coverage.Gap gap : coverage.gaps()) {
            line("  Not judged: count " + subject.count(gap.step()) + ", unknown: "
                    + Message.listed(gap.unknown()).english()
                    + (gap.since().isEmpty() ? "" : " (since " + gap.since().english() + ")")
                    + (gap.words().isEmpty() ? "" : "; not read: '" + String.join("', '", gap.words()) + "'"));
        }
        for (Coverage.End end : coverage.ends()) {
            line("  Not judged: the " + end.part() + ", unknown: "
                    + Message.listed(end.unknown()).english()
                    + (end.words().isEmpty() ? "" : "; not read: '" + String.join("', '", end.words()) + "'"));
        }
    }

    private void line(String line) {
        text.append(line).append('\n');
    }
}
