package org.drillwright.read;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.roster.Habits;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.Timing;

/** Reads what both a school and a class may say: how long things take, and the hall. */
final class HabitReader {

    private HabitReader() {}

    static Habits habits(MappingReader keys, NodeReader nodes) {
        return new Habits(
                timing(keys, Timing.USUAL),
                hall(keys, nodes, Optional.empty()),
                keys.yesOrNo("initials").orElse(false));
    }

    /** @param usual what holds for what is not stated */
    static Timing timing(MappingReader keys, Timing usual) {
        return keys.mapping("timing")
                .map(named -> {
                    Timing timing = new Timing(
                            seconds(named, "opening", usual.opening()),
                            seconds(named, "warm-up", usual.warmUp()),
                            seconds(named, "closing", usual.closing()),
                            seconds(named, "changeover", usual.changeover()),
                            seconds(named, "swap", usual.swap()),
                            seconds(named, "change", usual.change()),
                            seconds(named, "reset", usual.reset()),
                            seconds(named, "explain-new", usual.explainNew()),
                            seconds(named, "explain-known", usual.explainKnown()));
                    named.finish();
                    return timing;
                })
                .orElse(usual);
    }

    private static Duration seconds(MappingReader keys, String key, Duration usual) {
        return Duration.ofSeconds(keys.wholeNumber(key, 0, 3_600).orElse((int) usual.toSeconds()));
    }

    /** @param usual the hall that a class has if it names none; what a class names of it takes its place */
    static Optional<Hall> hall(MappingReader keys, NodeReader nodes, Optional<Hall> usual) {
        Optional<Hall> named = keys.mapping("hall").map(hall -> {
            for (String key : List.of("length", "width")) {
                if (!hall.has(key) && usual.isEmpty()) {
                    hall.missing(key);
                }
            }
            return hall(hall, nodes, usual.orElse(Hall.of(0, 0)));
        });
        return named.or(() -> usual);
    }

    private static Hall hall(MappingReader keys, NodeReader nodes, Hall usual) {
        Hall hall = new Hall(
                centimetres(keys, "length", usual.length(), nodes),
                centimetres(keys, "width", usual.width(), nodes),
                centimetres(keys, "lane-length", usual.laneLength(), nodes),
                centimetres(keys, "lane-width", usual.laneWidth(), nodes),
                centimetres(keys, "side-gap", usual.sideGap(), nodes),
                centimetres(keys, "end-gap", usual.endGap(), nodes),
                centimetres(keys, "side-margin", usual.sideMargin(), nodes),
                centimetres(keys, "end-margin", usual.endMargin(), nodes));
        keys.finish();
        return hall;
    }

    /** Metres with at most two places, as whole centimetres: no length is ever a fraction. A lane has a size. */
    private static int centimetres(MappingReader keys, String key, int usual, NodeReader nodes) {
        Optional<String> written = keys.text(key, ReadingLimits.SHORT_TEXT);
        if (written.isEmpty()) {
            return usual;
        }
        if (written.get().matches("\\d{1,3}([.,]\\d{1,2})?")) {
            BigDecimal metres = new BigDecimal(written.get().replace(',', '.'));
            if (metres.signum() > 0 || !key.startsWith("lane")) {
                return metres.movePointRight(2).intValueExact();
            }
        }
        nodes.findings()
                .error(
                        ReadingRule.RIGHT_KIND.id(),
                        nodes.places().span(keys.path().key(key)),
                        "'" + key + "' wants a length in metres.",
                        "Write figures alone, such as 18 or 9.5.");
        return usual;
    }
}
