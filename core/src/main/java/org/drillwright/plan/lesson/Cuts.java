package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.roster.OwnBlock;

/** By how much a lesson is too long, and what could be cut instead of leaving drills out. */
final class Cuts {

    private Cuts() {}

    static List<Remark> advice(Lesson lesson, List<DrillLoad> all, List<DrillLoad> chosen) {
        List<Remark> advice = new ArrayList<>();
        Duration over = lesson.needed(all).minus(lesson.length());
        if (chosen.size() < all.size()) {
            advice.add(new Remark.LeftOut(
                    over,
                    all.stream()
                            .filter(load -> !chosen.contains(load))
                            .map(DrillLoad::drill)
                            .toList()));
        }
        Duration mustOver = lesson.needed(chosen).minus(lesson.length());
        if (!mustOver.isNegative() && !mustOver.isZero()) {
            advice.add(new Remark.TooLong(mustOver));
            without(lesson, mustOver)
                    .ifPresent(block -> advice.add(new Remark.Without(block.name(), block.length(), false)));
        }
        if (!over.isNegative() && !over.isZero()) {
            advice.add(fewerRepetitions(all, over));
            without(lesson, over)
                    .ifPresent(block -> advice.add(new Remark.Without(block.name(), block.length(), true)));
        }
        return advice;
    }

    /** The shortest block of the school's own whose minutes are enough. */
    private static Optional<OwnBlock> without(Lesson lesson, Duration over) {
        return lesson.own().laid().stream()
                .filter(block -> block.length().compareTo(over) >= 0)
                .min(Comparator.comparing(OwnBlock::length));
    }

    /** Takes one repetition off each drill in turn until it fits. */
    private static Remark fewerRepetitions(List<DrillLoad> all, Duration over) {
        Map<String, Integer> off = new LinkedHashMap<>();
        Duration saved = Duration.ZERO;
        boolean found = true;
        while (found) {
            found = false;
            for (DrillLoad load : all) {
                int less = off.getOrDefault(load.drill(), 0);
                if (saved.compareTo(over) < 0 && load.repetitions() - less > 1) {
                    off.put(load.drill(), less + 1);
                    saved = saved.plus(load.savedByOneLess());
                    found = true;
                }
            }
        }
        if (saved.compareTo(over) < 0) {
            return new Remark.NeverAll();
        }
        return new Remark.FewerRepetitions(
                off.entrySet().stream()
                        .map(entry -> new Remark.Less(entry.getKey(), entry.getValue()))
                        .toList(),
                saved);
    }
}
