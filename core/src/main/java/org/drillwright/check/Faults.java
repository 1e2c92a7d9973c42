package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Side;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Move;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.Spot;
import org.drillwright.phrase.State;
import org.drillwright.phrase.Where;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** All refusals of a drill's replay, each in its place, in the order in which they came. */
final class Faults {

    private final Subject subject;
    private final Rehearsal rehearsal;
    private final List<Fault> faults = new ArrayList<>();

    private Faults(Subject subject, Rehearsal rehearsal) {
        this.subject = subject;
        this.rehearsal = rehearsal;
    }

    static List<Fault> of(Subject subject, Rehearsal rehearsal) {
        Faults faults = new Faults(subject, rehearsal);
        Replay replay = rehearsal.replay();
        faults.addAll(-1, replay.opening(), "opening");
        for (int step = 0; step < replay.counts().size(); step++) {
            faults.addCount(step, replay.counts().get(step));
        }
        faults.addAll(replay.counts().size(), replay.closing(), "closing");
        return List.copyOf(faults.faults);
    }

    private void addCount(int step, Count count) {
        Message where = Where.count(subject.count(step));
        for (Played played : count.moves()) {
            if (!played.refusals().isEmpty()) {
                add(step, played, subject.turnWords(step, played.move().by()), where);
            }
        }
        for (Map.Entry<Side, Refusal> unmet : count.unmet().entrySet()) {
            Side side = unmet.getKey();
            Written turn = subject.turnWords(step, side);
            Span span = turn.text().isEmpty() ? subject.spanInStep(step, "") : turn.whole();
            add(unmet.getValue(), new Spot(step, side, List.of()), where, lastBefore(count), span);
        }
    }

    /** The count when all of it has been played, an attack that nothing met still on its way. */
    private static State lastBefore(Count count) {
        return count.moves().isEmpty()
                ? count.begin()
                : count.moves().get(count.moves().size() - 1).after();
    }

    private void addAll(int part, List<Played> moves, String name) {
        moves.stream()
                .filter(played -> !played.refusals().isEmpty())
                .forEach(played -> add(part, played, subject.words(FieldPath.of(name)), Where.part(name)));
    }

    private void add(int part, Played played, Written told, Message where) {
        Move move = played.move();
        Spot spot = new Spot(
                part, move.by(), move.parts().stream().map(Clause::span).toList());
        for (Refusal refusal : played.refusals()) {
            add(refusal, spot, where, played.before(), told.span(move.span()));
        }
    }

    private boolean inDoubt(int step) {
        List<Count> counts = rehearsal.replay().counts();
        return step >= 0
                && step < counts.size()
                && counts.get(step).moves().stream()
                        .anyMatch(played -> played.move().isInDoubt());
    }

    private void add(Refusal refusal, Spot spot, Message where, State before, Span span) {
        Attempt attempt = new Attempt(rehearsal, spot, refusal);
        faults.add(new Fault(refusal, spot.by(), where, before, attempt, inDoubt(spot.part()), span));
    }
}
