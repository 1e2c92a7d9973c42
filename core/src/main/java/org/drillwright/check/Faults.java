package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.State;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** All refusals of a drill's replay, each in its place, in the order in which they came. */
final class Faults {

    private final Subject subject;
    private final List<Fault> faults = new ArrayList<>();

    private Faults(Subject subject) {
        this.subject = subject;
    }

    static List<Fault> of(Subject subject, Replay replay) {
        Faults faults = new Faults(subject);
        faults.addAll(replay.opening(), subject.words(FieldPath.of("opening")), "the opening");
        for (int step = 0; step < replay.counts().size(); step++) {
            faults.addCount(step, replay.counts().get(step));
        }
        faults.addAll(replay.closing(), subject.words(FieldPath.of("closing")), "the closing");
        return List.copyOf(faults.faults);
    }

    private void addCount(int step, Count count) {
        String where = "count " + subject.count(step);
        for (Played played : count.moves()) {
            Written words = subject.turnWords(step, played.move().by());
            add(played, words, where);
        }
        for (Map.Entry<Side, Refusal> unmet : count.unmet().entrySet()) {
            Written words = subject.turnWords(step, unmet.getKey());
            Span span = words.text().isEmpty() ? subject.spanInStep(step, "") : words.whole();
            faults.add(new Fault(unmet.getValue(), unmet.getKey(), where, lastBefore(count), Optional.empty(), span));
        }
    }

    /** The count when all of it has been played, an attack that nothing met still on its way. */
    private static State lastBefore(Count count) {
        return count.moves().isEmpty()
                ? count.begin()
                : count.moves().get(count.moves().size() - 1).after();
    }

    private void addAll(List<Played> moves, Written words, String where) {
        moves.forEach(played -> add(played, words, where));
    }

    private void add(Played played, Written words, String where) {
        for (Refusal refusal : played.refusals()) {
            Span span = words.span(played.move().span());
            faults.add(new Fault(refusal, played.move().by(), where, played.before(), Optional.of(played.move()), span));
        }
    }
}
