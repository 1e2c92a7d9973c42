package org.drillwright.plan.pair;

import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;

/**
 * How three work on a drill together.
 *
 * @param drill the drill in whose rounds there are such threes
 * @param middle whether one in the middle works with each of the others in turn; else all three alike
 * @param repetitions of a pair, in each role
 */
public record Three(String drill, boolean middle, int repetitions) {

    /** Of a plan, each once: first those with one in the middle. */
    public static List<Three> of(PairingPlan pairs, ToIntFunction<String> repetitions) {
        return Stream.of(true, false)
                .flatMap(middle -> pairs.rounds().stream()
                        .filter(round -> round.groups().stream()
                                .anyMatch(group -> group.kind() == Group.Kind.THREE
                                        && group.middle().isPresent() == middle))
                        .map(Round::drill)
                        .distinct()
                        .map(drill -> new Three(drill, middle, repetitions.applyAsInt(drill))))
                .toList();
    }

    /**
     * So many repetitions end with those of the pairs: whoever is in the middle works four turns of four, so twice as long;
     * three alike three of which each counts one.
     */
    public long fewer() {
        return middle ? Math.round(repetitions / 2.0) : Math.round(repetitions * 2 / 3.0);
    }

    /** Whether fewer repetitions end with those of the pairs; if not, the three takes longer. */
    public boolean canEndWithPairs() {
        return fewer() != 0 && fewer() != repetitions;
    }
}
