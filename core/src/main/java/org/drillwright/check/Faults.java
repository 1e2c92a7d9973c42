package org.drillwright.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Refusal;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.State;
import org.drillwright.source.FieldPath;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** All refusals of a drill's replay, each in its place, in the order in which they came. */
final class Faults {

    private final Subject subject;
    private final Setting setting;
    private final List<Fault> faults = new ArrayList<>();

    private Faults(Subject subject, Setting setting) {
        this.subject = subject;
        this.setting = setting;
    }

    static List<Fault> of(Subject subject, Replay replay) {
        Faults faults = new Faults(subject, replay.setting());
        faults.addAll(replay.opening(), subject.words(FieldPath.of("opening")), "the opening");
        for (int step = 0; step < replay.counts().size(); step++) {
            faults.addCount(step, replay.counts().get(step));
        }
        faults.addAll(replay.closing(), subject.words(FieldPath.of("closing")), "the closing");
        return List.copyOf(faults.faults);
    }

    private void addCount(int step, Count count) {
        String where = "count " + subject.count(step);
        Set<Side> lunged = EnumSet.noneOf(Side.class);
        for (Played played : count.moves()) {
            Side by = played.move().by();
            add(played, subject.turnWords(step, by), where, lunged.contains(by.other()));
            if (played.move().lunge().isPresent()) {
                lunged.add(by);
            }
        }
        for (Map.Entry<Side, Refusal> unmet : count.unmet().entrySet()) {
            Written words = subject.turnWords(step, unmet.getKey());
            Span span = words.text().isEmpty() ? subject.spanInStep(step, "") : words.whole();
            State state = lastBefore(count);
            faults.add(new Fault(
                    unmet.getValue(),
                    unmet.getKey(),
                    where,
                    state,
                    Optional.empty(),
                    new Attempt(setting, state, true),
                    span));
        }
    }

    /** The count when all of it has been played, an attack that nothing met still on its way. */
    private static State lastBefore(Count count) {
        return count.moves().isEmpty()
                ? count.begin()
                : count.moves().get(count.moves().size() - 1).after();
    }

    private void addAll(List<Played> moves, Written words, String where) {
        moves.forEach(played -> add(played, words, where, false));
    }

    private void add(Played played, Written words, String where, boolean othersLunge) {
        Attempt attempt = new Attempt(setting, played.before(), othersLunge);
        for (Refusal refusal : played.refusals()) {
            Span span = words.span(played.move().span());
            faults.add(new Fault(
                    refusal, played.move().by(), where, played.before(), Optional.of(played.move()), attempt, span));
        }
    }
}
