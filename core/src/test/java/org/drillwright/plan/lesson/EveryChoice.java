package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** Finds the best choice of drills by looking at every set of them; it shares no code with {@link DrillChoice}. */
final class EveryChoice {

    private EveryChoice() {}

    static List<DrillLoad> drawn(int drills, Random chance) {
        List<DrillLoad> drawn = new ArrayList<>();
        for (int at = 0; at < drills; at++) {
            List<String> needs = new ArrayList<>();
            for (int earlier = 0; earlier < at; earlier++) {
                if (chance.nextInt(5) == 0) {
                    needs.add("d" + earlier);
                }
            }
            drawn.add(new DrillLoad(
                    "d" + at,
                    1 + chance.nextInt(4),
                    Duration.ofSeconds(2),
                    Duration.ofSeconds(2),
                    1 + chance.nextInt(4),
                    2,
                    1 + chance.nextInt(2),
                    Duration.ofSeconds(60L * chance.nextInt(3)),
                    Duration.ofSeconds(10),
                    Duration.ofSeconds(30),
                    1,
                    1 + chance.nextInt(4),
                    chance.nextInt(12) == 0,
                    needs));
        }
        return drawn;
    }

    /**
     * Most value, then least time, then the earliest drills; sets that lack a need or a drill that must be are none. Where
     * no set fits: those that must be there, with all they need.
     */
    static List<DrillLoad> bestOf(List<DrillLoad> drills, long room) {
        List<DrillLoad> best = musts(drills);
        long[] bestKey = {};
        for (int set = 0; set < 1 << drills.size(); set++) {
            List<DrillLoad> chosen = new ArrayList<>();
            long order = 0;
            for (int at = 0; at < drills.size(); at++) {
                if ((set >> at & 1) == 1) {
                    chosen.add(drills.get(at));
                    order |= 1L << (drills.size() - at);
                }
            }
            long seconds =
                    chosen.stream().mapToLong(load -> load.total().toSeconds()).sum()
                            + 60L * Math.max(0, chosen.size() - 1);
            long value = chosen.stream().mapToLong(DrillLoad::value).sum();
            var ids = chosen.stream().map(DrillLoad::drill).collect(Collectors.toSet());
            boolean closed = chosen.stream().allMatch(load -> ids.containsAll(load.needs()));
            boolean must = drills.stream().filter(DrillLoad::must).allMatch(chosen::contains);
            long[] key = {-value, seconds, -order};
            if (closed && must && seconds <= room && (bestKey.length == 0 || Arrays.compare(key, bestKey) < 0)) {
                best = chosen;
                bestKey = key;
            }
        }
        return best;
    }

    /** Those that must be there, with all they need. */
    private static List<DrillLoad> musts(List<DrillLoad> drills) {
        var ids = new HashSet<String>();
        for (int at = drills.size() - 1; at >= 0; at--) {
            DrillLoad load = drills.get(at);
            if (load.must() || ids.contains(load.drill())) {
                ids.add(load.drill());
                ids.addAll(load.needs());
            }
        }
        return drills.stream().filter(load -> ids.contains(load.drill())).toList();
    }
}
