package org.drillwright.read;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillwright.plan.roster.Habits;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Timing;

/** Reads what both a school and a class may say: how long things take, the hall, and parts of a lesson of their own. */
final class HabitReader {

    private static final int MOST_MINUTES = 240;

    private HabitReader() {}

    static Habits habits(Keys keys) {
        return new Habits(
                timing(keys, Timing.USUAL),
                hall(keys, Optional.empty()),
                keys.yesOrNo("initials").orElse(false),
                blocks(keys, List.of()));
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

    /**
     * Those of a class are added to its school's; one of the same name takes the other's place, and says only what is
     * otherwise. Of no minutes: it is left out.
     */
    static List<OwnBlock> blocks(Keys keys, List<OwnBlock> usual) {
        List<OwnBlock> stated =
                new ArrayList<>(keys.groups("blocks", ReadingLimits.ITEMS, block -> block(block, usual)));
        List<OwnBlock> blocks = new ArrayList<>();
        for (OwnBlock block : usual) {
            Optional<OwnBlock> instead = named(stated, block.name());
            instead.ifPresent(stated::remove);
            blocks.add(instead.orElse(block));
        }
        blocks.addAll(stated);
        return blocks.stream().filter(block -> !block.length().isZero()).toList();
    }

    private static Optional<OwnBlock> named(List<OwnBlock> blocks, String name) {
        return blocks.stream().filter(block -> block.name().equals(name)).findFirst();
    }

    private static OwnBlock block(Keys keys, List<OwnBlock> usual) {
        String name = keys.needed("name", ReadingLimits.SHORT_TEXT);
        Optional<OwnBlock> before = named(usual, name);
        if (before.isEmpty()) {
            keys.need("minutes");
            keys.need("place");
        }
        OptionalInt minutes = keys.wholeNumber("minutes", 0, MOST_MINUTES);
        OwnBlock block = new OwnBlock(
                name,
                minutes.isPresent()
                        ? Duration.ofMinutes(minutes.getAsInt())
                        : before.map(OwnBlock::length).orElse(Duration.ZERO),
                keys.choice("place", List.of(OwnBlock.Place.values()), OwnBlock.Place::word)
                        .or(() -> before.map(OwnBlock::place))
                        .orElse(OwnBlock.Place.AFTER),
                keys.text("how", ReadingLimits.SHORT_TEXT)
                        .or(() -> before.map(OwnBlock::how))
                        .orElse(""));
        keys.finish();
        return block;
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
