package org.drillwright.print.bench.peers;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * Contenders timed by turns, so that whatever else the machine does meets all alike. Each is held against the first,
 * round by round; of the ratios the median counts.
 */
final class Turns {

    private final Map<String, List<Timed>> times = new LinkedHashMap<>();
    private final String first;

    private Turns(List<Contender> contenders) {
        contenders.forEach(one -> times.put(one.name(), new ArrayList<>()));
        this.first = contenders.get(0).name();
    }

    static Turns of(List<Contender> contenders, int rounds) throws IOException, InterruptedException {
        Turns turns = new Turns(contenders);
        for (int round = 0; round < rounds; round++) {
            for (Contender one : contenders) {
                turns.of(one.name()).add(one.run());
            }
        }
        return turns;
    }

    List<String> names() {
        return List.copyOf(times.keySet());
    }

    private List<Timed> of(String name) {
        return times.computeIfAbsent(name, unknown -> new ArrayList<>());
    }

    /** What it answered, each time the same. */
    String result(String name) {
        List<String> results = of(name).stream().map(Timed::result).distinct().toList();
        if (results.size() != 1) {
            throw new IllegalStateException(name + " answered " + results);
        }
        return results.get(0);
    }

    /** By the clock, in milliseconds. */
    Spread clock(String name) {
        return Spread.of(of(name).stream().mapToDouble(one -> one.clock() / 1e6));
    }

    /** How many times as long as the first took by the clock. */
    Spread clockRatio(String name) {
        return ratio(name, Timed::clock);
    }

    /** How many times as much of the processors as the first. */
    Spread processorRatio(String name) {
        return ratio(name, Timed::processor);
    }

    private Spread ratio(String name, ToLongFunction<Timed> what) {
        List<Double> ratios = new ArrayList<>();
        for (int round = 0; round < of(name).size(); round++) {
            double ours = Math.max(1, what.applyAsLong(of(first).get(round)));
            ratios.add(what.applyAsLong(of(name).get(round)) / ours);
        }
        return Spread.of(ratios.stream().mapToDouble(ratio -> ratio));
    }
}
