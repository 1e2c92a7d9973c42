package org.drillwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.drillwright.model.Side;
import org.drillwright.notation.OtherReading;
import org.drillwright.notation.TwoReadings;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.source.Span;

/**
 * Chooses among several readings of a turn by playing each: an error stands only where every reading fails, and where one
 * fails that another does not, it is said that the words are open.
 */
final class Readings {

    private final Subject subject;
    private Tried best;

    private Readings(Subject subject, Tried first) {
        this.subject = subject;
        this.best = first;
    }

    /** The drill played with its words read in one way. */
    private record Tried(Script script, Rehearsal played) {

        /** The same drill, read otherwise. */
        Tried as(Script other) {
            return new Tried(other, played.otherwise(other.words()));
        }

        int refusals() {
            return played.replay().refusals();
        }
    }

    /**
     * The performance with the fewest faults that the words allow, turn by turn from the first count on.
     *
     * @param first the drill as it plays with its words as they were read first
     */
    static Performance chosen(Subject subject, Script read, Rehearsal first) {
        Tried asRead = new Tried(read, first);
        Script told = ToldOfBoth.read(read);
        Readings readings = new Readings(subject, told.equals(read) ? asRead : asRead.as(told));
        readings.chooseAround(Script::opening, Script::opening);
        subject.turns().forEach(turn -> readings.choose(turn.step(), turn.side()));
        readings.chooseAround(Script::closing, Script::closing);
        Tried best = readings.best;
        return new Performance(best.script(), best.played(), Faults.of(subject, best.played()));
    }

    /** Before and behind the counts, too: masks that come down are put on at first and taken off at last. */
    private void chooseAround(Function<Script, Utterance> part, BiFunction<Script, Utterance, Script> with) {
        for (OtherReading reading : part.apply(best.script()).others()) {
            if (reading.kind() != OtherReading.Kind.OF_YOUR_PARTNER && reading.kind() != OtherReading.Kind.OF_ONESELF) {
                Tried other = best.as(with.apply(best.script(), reading.utterance()));
                best = other.refusals() < best.refusals() ? other : best;
            }
        }
    }

    private void choose(int step, Side side) {
        chooseByPlaying(step, side);
        if (ToldOfBoth.leavesOpenWhose(best.script(), step, side)) {
            Utterance turn = best.script().turn(step, side).byNobodyKnown();
            best = best.as(best.script().with(step, side, turn));
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
        List<Tried> all = others.stream()
                .map(other -> best.as(best.script().with(step, side, other.utterance())))
                .toList();
        Tried chosen = best;
        for (Tried one : all) {
            chosen = one.refusals() < chosen.refusals() ? one : chosen;
        }
        Utterance meant = chosen.script().turn(step, side);
        List<TwoReadings> open = new ArrayList<>();
        String tag = subject.reader().tag(subject.turnWords(step, side).text());
        for (int at = 0; at < all.size() && open.isEmpty(); at++) {
            OtherReading other = others.get(at);
            if (other.asLikely() && all.get(at).refusals() > chosen.refusals()) {
                open.add(new TwoReadings(whole(meant), said(meant, tag), said(other.utterance(), tag)));
            }
        }
        best = chosen.as(chosen.script().with(step, side, meant.leaving(open)));
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
