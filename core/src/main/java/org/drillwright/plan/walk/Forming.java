package org.drillwright.plan.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.rounds.Method;

/** Rounds in which people change over by one movement, and who has which part in it. */
public final class Forming {

    private final int from;
    private final int to;
    private final Formation formation;
    private final int[] holder;

    /**
     * @param from the first of its rounds, counted from 0
     * @param to the round after its last
     * @param holder for each spot a student, a helper or the blank
     */
    Forming(int from, int to, Formation formation, int[] holder) {
        this.from = from;
        this.to = to;
        this.formation = formation;
        this.holder = holder.clone();
    }

    static Forming of(int from, int to, LinePosts lines) {
        int[] holder = Stream.concat(lines.stays().stream(), lines.moves().stream())
                .mapToInt(Integer::intValue)
                .toArray();
        return new Forming(from, to, new TwoLines(lines.stays().size()), holder);
    }

    /** The first of its rounds, counted from 0. */
    public int from() {
        return from;
    }

    /** The round after its last. */
    public int to() {
        return to;
    }

    public boolean holds(int round) {
        return from <= round && round < to;
    }

    Formation formation() {
        return formation;
    }

    /** Whether it is two lines. */
    public boolean isLines() {
        return formation.method() == Method.TWO_LINES;
    }

    int[] holders() {
        return holder.clone();
    }

    /** Who stands still, by their spots. */
    public List<Integer> stays() {
        return Arrays.stream(holder).limit(formation.still()).boxed().toList();
    }

    /** Who moves, by their spots; in two lines these are the posts of the first round. */
    public List<Integer> moves() {
        return Arrays.stream(holder).skip(formation.still()).boxed().toList();
    }

    /** Whom somebody faces in a round. */
    int facing(int round, int vertex) {
        return holder[formation.facing(round - from, spot(vertex))];
    }

    /** At which post somebody is in a round, counted from 0. */
    public int post(int round, int vertex) {
        return formation.post(round - from, spot(vertex));
    }

    private int spot(int vertex) {
        return IntStream.range(0, holder.length)
                .filter(spot -> holder[spot] == vertex)
                .findFirst()
                .orElseThrow();
    }

    /** How the second line stands if it goes on for one round more. */
    List<Integer> next() {
        List<Integer> next = new ArrayList<>();
        for (int post = 0; post < formation.still(); post++) {
            next.add(holder[formation.facing(to - from, post)]);
        }
        return next;
    }
}
