package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.drillwright.model.Side;
import org.drillwright.notation.OtherReading;
import org.drillwright.notation.TwoReadings;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Span;

/**
 * Chooses among several readings of a turn by playing each: an error stands only where every reading fails, and where one
 * fails that another does not, it is said that the words are open.
 */
final class Readings {

    private final Subject subject;
    private Performance best;

    private Readings(Subject subject, Performance first) {
        this.subject = subject;
        this.best = first;
    }

    /** The performance with the fewest faults that the words allow, turn by turn from the first count on. */
    static Performance chosen(Subject subject, Performance first) {
        Script told = ToldOfBoth.read(first.script());
        Readings readings = new Readings(subject, told.equals(first.script()) ? first : Performance.of(subject, told));
        readings.chooseAround(Script::opening, Script::opening);
        subject.turns().forEach(turn -> readings.choose(turn.step(), turn.side()));
        readings.chooseAround(Script::closing, Script::closing);
        return readings.best;
    }

    /** Before and behind the counts, too: masks that come down are put on at first and taken off at last. */
    private void chooseAround(Function<Script, Utterance> part, BiFunction<Script, Utterance, Script> with) {
        for (OtherReading other : part.apply(best.script()).others()) {
            if (other.kind() != OtherReading.Kind.OF_YOUR_PARTNER && other.kind() != OtherReading.Kind.OF_ONESELF) {
                Performance played = Performance.of(subject, with.apply(best.script(), other.utterance()));
                best = played.faults().size() < best.faults().size() ? played : best;
            }
        }
    }

    private void choose(int step, Side side) {
        chooseByPlaying(step, side);
        if (ToldOfBoth.leavesOpenWhose(best.script(), step, side)) {
            Utterance turn = best.script().turn(step, side).byNobodyKnown();
            best = Performance.of(subject, best.script().with(step, side, turn));
        }
    }

    private void chooseByPlaying(int step, Side side) {
        Utterance first = best.script().turn(step, side);
        List<OtherReading> others = first.others().stream()
                .filter(other -> other.kind() != OtherReading.Kind.OF_YOUR_PARTNER)
                .toList();
        if (others.isEmpty()) {
            return;
        }
        List<Performance> all = others.stream()
                .map(other -> Performance.of(subject, best.script().with(step, side, other.utterance())))
                .toList();
        Performance chosen = best;
        for (Performance played : all) {
            chosen = played.faults().size() < chosen.faults().size() ? played : chosen;
        }
        Utterance meant = chosen.script().turn(step, side);
        List<TwoReadings> open = new ArrayList<>();
        String tag = subject.reader().tag(subject.turnWords(step, side).text());
        for (int at = 0; at < all.size() && open.isEmpty(); at++) {
            OtherReading other = others.get(at);
            if (other.asLikely()
                    && all.get(at).faults().size() > chosen.faults().size()) {
                open.add(new TwoReadings(whole(meant), said(meant, tag), said(other.utterance(), tag)));
            }
        }
        best = Performance.of(subject, chosen.script().with(step, side, meant.leaving(open)));
    }

    private String said(Utterance turn, String tag) {
        return subject.reader().said(turn, tag);
    }

    private static Span whole(Utterance turn) {
        return turn.clauses().stream()
                .map(clause -> clause.span())
                .reduce(Span::to)
                .orElse(Span.at(0));
    }
}
