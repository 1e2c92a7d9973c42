package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Chooses the drills of greatest value that fit into a time, each with all it needs. Exact, by branch and bound. Of
 * choices of equal value the one that takes less time, then the one that has the drills that stand earlier.
 */
final class DrillChoice {

    private final List<DrillLoad> drills;
    private final long[] seconds;
    private final boolean[] wanted;
    private final int[] byThrift;
    private final long capacity;
    private final boolean[] taken;
    private boolean[] best;
    private long bestValue = -1;
    private long bestSeconds;

    private DrillChoice(List<DrillLoad> drills, Duration time, Duration changeover) {
        this.drills = drills;
        // One changeover for each drill, and room for the one that the first drill doesn't have.
        this.seconds = drills.stream()
                .mapToLong(load -> load.total().plus(changeover).toMillis())
                .toArray();
        this.capacity = time.plus(changeover).toMillis();
        this.wanted = wanted();
        this.byThrift = IntStream.range(0, drills.size())
                .boxed()
                .sorted(Comparator.comparing((Integer at) -> !wanted[at])
                        .thenComparingDouble(at -> (double) seconds[at] / Math.max(1, value(at))))
                .mapToInt(Integer::intValue)
                .toArray();
        this.taken = new boolean[drills.size()];
        this.best = new boolean[drills.size()];
    }

    /**
     * The drills chosen, in their order.
     *
     * @param drills each after those it needs
     * @param time for the drills and the changeovers between them; drills that must be there are chosen even beyond it
     */
    static List<DrillLoad> of(List<DrillLoad> drills, Duration time, Duration changeover) {
        DrillChoice choice = new DrillChoice(drills, time, changeover);
        choice.branch(0, 0, 0);
        List<DrillLoad> chosen = new ArrayList<>();
        for (int at = 0; at < drills.size(); at++) {
            if (choice.best[at]) {
                chosen.add(drills.get(at));
            }
        }
        return chosen;
    }

    private int value(int at) {
        return drills.get(at).value();
    }

    private void branch(int at, long value, long used) {
        if (isHopeless(at, value, used)) {
            return;
        }
        if (at == drills.size()) {
            bestValue = value;
            bestSeconds = used;
            best = taken.clone();
            return;
        }
        boolean must = wanted[at];
        if (hasNeeds(at) && (must || used + seconds[at] + reserved(at + 1) <= capacity)) {
            taken[at] = true;
            branch(at + 1, value + value(at), used + seconds[at]);
            taken[at] = false;
        }
        if (!must) {
            branch(at + 1, value, used);
        }
    }

    /** Time for those that must come later. */
    private long reserved(int from) {
        return IntStream.range(from, drills.size())
                .filter(at -> wanted[at])
                .mapToLong(at -> seconds[at])
                .sum();
    }

    /** Those that must be there themselves, or are needed by one that must. */
    private boolean[] wanted() {
        boolean[] found = new boolean[drills.size()];
        for (int last = drills.size() - 1; last >= 0; last--) {
            int at = last;
            found[at] = drills.get(at).must()
                    || IntStream.range(at + 1, found.length).anyMatch(later -> found[later] && isNeededBy(at, later));
        }
        return found;
    }

    private boolean isNeededBy(int at, int later) {
        return drills.get(later).needs().contains(drills.get(at).drill());
    }

    private boolean hasNeeds(int at) {
        return IntStream.range(0, at).noneMatch(earlier -> isNeededBy(earlier, at) && !taken[earlier]);
    }

    /**
     * Whether even parts of drills, those that must be there and then those of most value for their time first, could not
     * make it better than the best.
     */
    private boolean isHopeless(int at, long value, long used) {
        double room = Math.max(0, capacity - used);
        double hoped = value;
        double least = used;
        double missing = bestValue - value;
        for (int drill : byThrift) {
            if (drill < at) {
                continue;
            }
            double part = wanted[drill] ? 1 : Math.min(1, room / Math.max(1, seconds[drill]));
            hoped += part * value(drill);
            room = Math.max(0, room - seconds[drill]);
            double wantedPart = Math.min(1, Math.max(0, missing) / Math.max(1, value(drill)));
            least += wantedPart * seconds[drill];
            missing -= value(drill);
        }
        // Parts are fractions: what misses a whole number by this little is that number.
        double slip = 1e-6;
        boolean noMoreValue = hoped < bestValue + 1 - slip;
        boolean noLessTime = least > bestSeconds - slip;
        return hoped < bestValue - slip || (noMoreValue && noLessTime);
    }
}
