package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.drillwright.plan.roster.OwnBlock;

/** Says by how much a lesson is too long, and what could be cut instead of leaving drills out. */
final class Cuts {

    private Cuts() {}

    static List<String> advice(Lesson lesson, List<DrillLoad> all, List<DrillLoad> chosen) {
        List<String> advice = new ArrayList<>();
        Duration over = lesson.needed(all).minus(lesson.length());
        if (chosen.size() < all.size()) {
            advice.add("Together they take " + shown(over) + " more than the class lasts; left out: "
                    + all.stream()
                            .filter(load -> !chosen.contains(load))
                            .map(DrillLoad::drill)
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        Duration mustOver = lesson.needed(chosen).minus(lesson.length());
        if (!mustOver.isNegative() && !mustOver.isZero()) {
            advice.add("The drills that must be included take " + shown(mustOver) + " more than the class lasts.");
            without(lesson, mustOver).ifPresent(block -> advice.add("Without " + block + " they would fit."));
        }
        if (!over.isNegative() && !over.isZero()) {
            advice.add(fewerRepetitions(all, over));
            without(lesson, over).ifPresent(block -> advice.add("Without " + block + " they would all fit."));
        }
        return advice;
    }

    /** The shortest block of the school's own whose minutes are enough. */
    private static Optional<String> without(Lesson lesson, Duration over) {
        return lesson.own().laid().stream()
                .filter(block -> block.length().compareTo(over) >= 0)
                .min(Comparator.comparing(OwnBlock::length))
                .map(block -> block.name() + " (" + shown(block.length()) + ")");
    }

    /** Takes one repetition off each drill in turn until it fits. */
    private static String fewerRepetitions(List<DrillLoad> all, Duration over) {
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
            return "Even at one repetition each they don't all fit.";
        }
        return "To keep them all, cut repetitions: "
                + off.entrySet().stream()
                        .map(entry -> entry.getKey() + " " + entry.getValue())
                        .collect(Collectors.joining(", "))
                + "; that saves " + shown(saved) + ".";
    }

    static String shown(Duration duration) {
        return duration.toMinutes() + ":" + String.format(Locale.ROOT, "%02d", duration.toSecondsPart()) + " min";
    }
}
