package org.drillwright.plan.walk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.rounds.Solver;
import org.drillwright.plan.walk.Posting.Posted;

/**
 * Finds formings for an evening. A drill that no forming serves is read from the sheet; the others are served by the fewest
 * formings, found by going through the drills in order, or by as many as are asked for. Where people stand is sought by
 * {@link Posting}, so it is as good as was found.
 */
public final class Walks {

    /** Ways to part the drills that are tried, of many people fewer. */
    private static final int TRIED = 8;

    private static final int TRIED_OF_MANY = 2;

    /** The best of these, which are pursued. */
    private static final int PURSUED = 2;

    private static final int MANY = 60;

    private final Problem problem;
    private final List<Extras> least;
    private final List<Stretch> drills;
    private final Map<Stretch, Forming> served = new HashMap<>();
    private final List<Obstacle> obstacles = new ArrayList<>();
    private final Map<Integer, Optional<Walked>> found = new HashMap<>();
    private Optional<Solution> free = Optional.empty();

    /** The rounds of a drill, one after the other; the last one excluded. */
    private record Stretch(int from, int to) {}

    /** @param each the drill of each round */
    public Walks(Problem problem, List<String> each) {
        this.problem = problem;
        this.least = Extras.ofAll(problem);
        this.drills = problem.students() == 0 ? List.of() : stretches(each);
        for (int first = 0; first < drills.size(); first++) {
            for (int last = first; last < drills.size(); last++) {
                Stretch all =
                        new Stretch(drills.get(first).from(), drills.get(last).to());
                forming(all.from(), all.to()).ifPresent(forming -> served.put(all, forming));
            }
            if (isRead(first)) {
                obstacles.add(obstacle(drills.get(first)));
            }
        }
    }

    private static List<Stretch> stretches(List<String> each) {
        List<Stretch> drills = new ArrayList<>();
        for (int from = 0, to = 1; from < each.size(); from = to, to++) {
            while (to < each.size() && each.get(to).equals(each.get(from))) {
                to++;
            }
            drills.add(new Stretch(from, to));
        }
        return drills;
    }

    private Obstacle obstacle(Stretch drill) {
        Dealing dealing = new Dealing(problem, least, drill.from(), drill.to());
        return dealing.lines(new BitSet()).isPresent()
                ? new Obstacle(drill.from(), drill.to(), Obstacle.Why.REST, List.of(), problem.helpers())
                : dealing.obstacle();
    }

    /** One forming for some rounds: one in which all may meet across; if there are few rounds, one that does for these. */
    private Optional<Forming> forming(int from, int to) {
        Dealing dealing = new Dealing(problem, least, from, to);
        Optional<Forming> exact = dealing.lines(new BitSet())
                .map(lines -> Forming.of(from, to, lines))
                .filter(this::isSettled);
        if (exact.isPresent()) {
            return exact;
        }
        return dealing.sizes()
                .filter(lines -> to - from < lines.stays().size())
                .map(lines -> Posting.improved(problem, List.of(Forming.of(from, to, lines))))
                .filter(Posted::isPermitted)
                .map(posted -> posted.formings().get(0))
                .filter(this::isSettled);
    }

    /** Whether those before gaps find somebody to join. */
    private boolean isSettled(Forming forming) {
        return !forming.moves().contains(problem.blank())
                || Solver.isSettled(problem, least, mates(List.of(forming)), open(List.of(forming)));
    }

    /** The drills that no forming serves, with what stands in the way. */
    public List<Obstacle> obstacles() {
        return List.copyOf(obstacles);
    }

    private boolean isRead(int drill) {
        return served(drill, drill).isEmpty();
    }

    private Optional<Forming> served(int first, int last) {
        return Optional.ofNullable(served.get(
                new Stretch(drills.get(first).from(), drills.get(last).to())));
    }

    /** The fewest formings that serve all drills that can be walked; 0 if there are none. */
    public int fewest() {
        int[] fewest = new int[drills.size() + 1];
        for (int last = 0; last < drills.size(); last++) {
            int least = isRead(last) ? fewest[last] : Integer.MAX_VALUE;
            for (int first = last; first >= 0 && !isRead(first); first--) {
                if (served(first, last).isPresent()) {
                    least = Math.min(least, fewest[first] + 1);
                }
            }
            fewest[last + 1] = least;
        }
        return fewest[drills.size()];
    }

    /** The most formings: one for each drill that can be walked. */
    public int most() {
        return drills.size() - obstacles.size();
    }

    /** The best evening of so many formings that was found; empty if there is none. */
    public Optional<Walked> of(int formings) {
        return found.computeIfAbsent(formings, this::sought);
    }

    /** As {@link #of}, with as many formings more or fewer as are needed. */
    public Optional<Walked> nearest(int formings) {
        for (int number = Math.min(most(), Math.max(fewest(), formings)); number <= most() && number > 0; number++) {
            if (of(number).isPresent()) {
                return of(number);
            }
        }
        return Optional.empty();
    }

    private Optional<Walked> sought(int formings) {
        if (formings < fewest() || formings > most() || formings == 0) {
            return Optional.empty();
        }
        Optional<Forming> ring = formings == 1 ? ring() : Optional.empty();
        if (ring.isPresent()) {
            return walked(ring.stream().toList());
        }
        List<List<Forming>> ways = new ArrayList<>();
        part(0, formings, List.of(), ways);
        return ways.stream()
                .sorted(Comparator.comparing(this::laps))
                .limit(problem.students() < MANY ? TRIED : TRIED_OF_MANY)
                .map(way -> Posting.once(problem, way))
                .sorted()
                .limit(problem.students() < MANY ? PURSUED : 1)
                .map(posted -> Posting.improved(problem, posted.formings()))
                .filter(Posted::isPermitted)
                .min(Comparator.naturalOrder())
                .flatMap(posted -> walked(posted.formings()));
    }

    /** All ways to part the drills from one on into so many formings. */
    private void part(int drill, int left, List<Forming> before, List<List<Forming>> ways) {
        if (drill == drills.size()) {
            if (left == 0) {
                ways.add(before);
            }
        } else if (isRead(drill)) {
            part(drill + 1, left, before, ways);
        } else {
            for (int last = drill; last < drills.size() && left > 0; last++) {
                int end = last;
                served(drill, last)
                        .ifPresent(forming -> part(
                                end + 1,
                                left - 1,
                                Stream.concat(before.stream(), Stream.of(following(before, forming)))
                                        .toList(),
                                ways));
            }
        }
    }

    /** Rounds beyond a whole lap, in which all meet again. */
    private int laps(List<Forming> way) {
        return way.stream()
                .mapToInt(forming -> Math.max(
                        0, forming.to() - forming.from() - forming.stays().size()))
                .sum();
    }

    /** A forming in which whoever keeps to a line goes on as in the one before, as far as that can be. */
    private Forming following(List<Forming> before, Forming forming) {
        if (before.isEmpty()) {
            return forming;
        }
        Forming last = before.get(before.size() - 1);
        BitSet moved = new BitSet();
        last.moves().stream().filter(problem::isStudent).forEach(moved::set);
        Dealing dealing = new Dealing(problem, least, forming.from(), forming.to());
        LinePosts lines = dealing.lines(moved).orElse(new LinePosts(forming.stays(), forming.moves()));
        return Forming.of(
                forming.from(),
                forming.to(),
                new LinePosts(continued(last.stays(), lines.stays()), continued(last.next(), lines.moves())));
    }

    /** Those of a line who stood in it before at the same posts; the others where there is room. Helpers and gaps stay. */
    private List<Integer> continued(List<Integer> before, List<Integer> line) {
        List<Integer> open =
                new ArrayList<>(line.stream().filter(problem::isStudent).toList());
        List<Integer> next = new ArrayList<>(line);
        BitSet free = new BitSet();
        for (int post = 0; post < line.size(); post++) {
            if (problem.isStudent(line.get(post))) {
                free.set(post, post >= before.size() || !open.remove(before.get(post)));
                if (!free.get(post)) {
                    next.set(post, before.get(post));
                }
            }
        }
        int at = 0;
        for (int post = free.nextSetBit(0); post >= 0; post = free.nextSetBit(post + 1)) {
            next.set(post, open.get(at++));
        }
        return next;
    }

    /** A single drill of more rounds than a line is long, but no more than a ring has places. */
    private Optional<Forming> ring() {
        if (drills.size() != 1) {
            return Optional.empty();
        }
        int rounds = problem.rounds();
        BitSet fresh = problem.strangers(0);
        int still = Math.max(1, fresh.cardinality());
        Extras extra = least.get(0);
        int spots = problem.students() + extra.helpers();
        boolean serves = least.stream().distinct().count() == 1
                && spots % 2 == 0
                && 2 * still <= spots
                && rounds > spots / 2
                && rounds <= spots - still
                && extra.threes() + extra.blanks() == 0;
        if (!serves) {
            return Optional.empty();
        }
        int[] holder = IntStream.concat(
                        IntStream.range(0, problem.students())
                                .boxed()
                                .sorted(Comparator.comparing(student -> fresh.get(student) ? 0 : 1))
                                .mapToInt(Integer::intValue),
                        IntStream.range(problem.students(), spots))
                .toArray();
        Posted posted =
                Posting.improved(problem, List.of(new Forming(0, rounds, new Ring(still, spots - still), holder)));
        return posted.isPermitted() ? posted.formings().stream().findFirst() : Optional.empty();
    }

    private Optional<Walked> walked(List<Forming> formings) {
        return Solver.beside(
                        problem,
                        least,
                        mates(formings),
                        open(formings),
                        formings.get(0).formation().method())
                .map(solution -> new Walked(solution, formings, obstacles, least, /* isBeaten= */ false));
    }

    /** The rounds that no forming holds. */
    private BitSet open(List<Forming> formings) {
        BitSet open = new BitSet();
        open.set(0, problem.rounds());
        formings.forEach(forming -> open.clear(forming.from(), forming.to()));
        return open;
    }

    private int[][] mates(List<Forming> formings) {
        int[][] mates = new int[problem.rounds()][problem.students()];
        for (int[] row : mates) {
            Arrays.fill(row, problem.blank());
        }
        for (Forming forming : formings) {
            for (int round = forming.from(); round < forming.to(); round++) {
                for (int student = 0; student < problem.students(); student++) {
                    mates[round][student] = forming.facing(round, student);
                }
            }
        }
        return mates;
    }

    /** The best that can be found whether it is walked or not. */
    public Walked free() {
        return unwalked(List.of(), /* isBeaten= */ false);
    }

    private Walked unwalked(List<Obstacle> why, boolean isBeaten) {
        Solution solution = free.orElseGet(() -> Solver.solve(problem));
        free = Optional.of(solution);
        return new Walked(solution, List.of(), why, least, isBeaten);
    }

    /**
     * The usual: the fewest formings with the least repeats; where everybody reading the sheet gives fewer repeats still, that.
     */
    public Walked usual() {
        Optional<Walked> best = Optional.empty();
        for (int formings = Math.max(1, fewest()); formings <= most() && !isBest(best); formings++) {
            long known = best.map(Walks::repeats).orElse(Long.MAX_VALUE);
            Optional<Walked> fewer = of(formings).filter(one -> repeats(one) < known);
            best = fewer.isPresent() ? fewer : best;
        }
        if (isBest(best)) {
            return best.orElseThrow();
        }
        Walked unwalked = unwalked(obstacles, best.isPresent());
        return best.filter(walked -> repeats(walked) <= repeats(unwalked)).orElse(unwalked);
    }

    /** Whether no plan at all has fewer repeats; or all is one forming and no lap is full, so that only thirds may meet again. */
    private boolean isBest(Optional<Walked> found) {
        return found.filter(walked -> isWithinALap(walked.formings())
                        || repeats(walked) <= walked.solution().bound().of(Objective.REPEATS))
                .isPresent();
    }

    private boolean isWithinALap(List<Forming> formings) {
        Forming first = formings.get(0);
        return first.isLines()
                && first.to() - first.from() == problem.rounds()
                && problem.rounds() <= first.stays().size();
    }

    /** Pairs that meet again, each as often as it does. */
    private static long repeats(Walked walked) {
        return walked.solution().cost().of(Objective.REPEATS);
    }
}
