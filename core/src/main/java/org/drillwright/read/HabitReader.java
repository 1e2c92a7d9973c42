package org.drillwright.read;

import java.time.Duration;
import java.util.Optional;
import org.drillwright.plan.roster.Habits;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.Timing;

/** Reads what both a school and a class may say: how long things take, and the hall. */
final class HabitReader {

    private HabitReader() {}

    static Habits habits(Keys keys) {
        return new Habits(
                timing(keys, Timing.USUAL),
                hall(keys, Optional.empty()),
                keys.yesOrNo("initials").orElse(false));
    }

    /** @param usual what holds for what is not stated */
    static Timing timing(Keys keys, Timing usual) {
        return keys.group("timing", named -> stated(named, usual)).orElse(usual);
    }

    private static Timing stated(Keys keys, Timing usual) {
        Timing timing = new Timing(
                seconds(keys, "opening", usual.opening()),
                seconds(keys, "warm-up", usual.warmUp()),
                seconds(keys, "closing", usual.closing()),
                seconds(keys, "changeover", usual.changeover()),
                seconds(keys, "swap", usual.swap()),
                seconds(keys, "change", usual.change()),
                seconds(keys, "reset", usual.reset()),
                seconds(keys, "explain-new", usual.explainNew()),
                seconds(keys, "explain-known", usual.explainKnown()),
                seconds(keys, "whole-class", usual.wholeClass()));
        keys.finish();
        return timing;
    }

    private static Duration seconds(Keys keys, String key, Duration usual) {
        return Duration.ofSeconds(keys.wholeNumber(key, 0, 3_600).orElse((int) usual.toSeconds()));
    }

    /** @param usual the hall that a class has if it names none; what a class names of it takes its place */
    static Optional<Hall> hall(Keys keys, Optional<Hall> usual) {
        return keys.group("hall", named -> {
                    if (usual.isEmpty()) {
                        named.need("length");
                        named.need("width");
                    }
                    return hall(named, usual.orElse(Hall.of(0, 0)));
                })
                .or(() -> usual);
    }

    private static Hall hall(Keys keys, Hall usual) {
        Hall hall = new Hall(
                keys.metres("length", false).orElse(usual.length()),
                keys.metres("width", false).orElse(usual.width()),
                keys.metres("lane-length", true).orElse(usual.laneLength()),
                keys.metres("lane-width", true).orElse(usual.laneWidth()),
                keys.metres("side-gap", false).orElse(usual.sideGap()),
                keys.metres("end-gap", false).orElse(usual.endGap()),
                keys.metres("side-margin", false).orElse(usual.sideMargin()),
                keys.metres("end-margin", false).orElse(usual.endMargin()));
        keys.finish();
        return hall;
    }
}
